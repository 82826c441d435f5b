/**
 * The house as it was told: what stands in a house file, with every quantity read and nothing worked out yet.
 *
 * <p>Each record is one thing of the file in the file's own words; each {@link
 * org.spile.geometry.kernel.measure.Reading} keeps the path it was typed at, so that whatever follows can name it.
 * Positions are still offsets from faces, sizes may still be missing, names may still dangle: {@code House.of} works all that out, or says what is wrong and at which path. Start reading at
 * {@link org.spile.geometry.house.told.ToldHouse}.
 *
 * <p>May use {@code kernel.measure} only; knows neither files nor bodies.
 */
package org.spile.geometry.house.told;
