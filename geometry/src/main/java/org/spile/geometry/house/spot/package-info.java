/**
 * Places that know the readings they rest on.
 *
 * <p>Every coordinate is a {@link org.spile.geometry.kernel.measure.Stack}: its value and, to first order, what each
 * reading adds to it. Sums of readings stay exact; {@link org.spile.geometry.house.spot.FirstOrder} multiplies, divides
 * and turns them, keeping the exact value and the first-order term. A {@link org.spile.geometry.house.spot.Spot} is a
 * point of three such coordinates, a {@link org.spile.geometry.house.spot.Slope} a sloping surface of them, a {@link
 * org.spile.geometry.house.spot.Shape} a body whose every point is a spot. So a tolerance needs no second model.
 *
 * <p>For the packages of {@code house} only; not exported. Uses the kernel.
 */
package org.spile.geometry.house.spot;
