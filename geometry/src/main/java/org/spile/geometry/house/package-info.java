/**
 * The house worked out: trailers, rooms, cavities, fixtures, movers, units, runs, terminals and lines as bodies in place,
 * stance by stance, each knowing how it moves with the readings it rests on.
 *
 * <p>A {@link org.spile.geometry.house.House} is what was {@linkplain org.spile.geometry.house.told told}, worked out; what
 * can't be is told as {@link org.spile.geometry.house.Trouble}s, all at once. A {@link org.spile.geometry.house.Scene} is
 * the house in one stance: {@link org.spile.geometry.house.Part}s in the site frame. Tolerances need no second model: a
 * part's {@link org.spile.geometry.house.Flex} says which readings a point of it rests on, so that a gap between two
 * parts is a {@link org.spile.geometry.kernel.measure.Stack} of readings.
 *
 * <p>Knows neither files nor air. May use the kernel. Read {@link org.spile.geometry.house.House} first.
 */
package org.spile.geometry.house;
