/**
 * Shapes in the plane: outlines with holes, plan shapes with a radius, their distance, overlay and growth.
 *
 * <p>Start with {@link org.spile.geometry.kernel.planar.Outline}. The geometry library behind the overlay stays inside
 * this package: coordinates that come back lie on a stated grid of 1 µm, and nothing else changes them. {@link
 * org.spile.geometry.kernel.planar.GeometryTolerance} states the tolerances of the whole kernel.
 */
package org.spile.geometry.kernel.planar;
