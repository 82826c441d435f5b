/**
 * Measured numbers: what a person wrote, in one unit, with its tolerance and where it comes from.
 *
 * <p>This is the only package that converts units. Read {@link org.spile.geometry.kernel.measure.Reading} first: one
 * number of the house file. {@link org.spile.geometry.kernel.measure.QuantityText} turns words into readings,
 * {@link org.spile.geometry.kernel.measure.Stack} adds readings up so that worst cases come out right even where one
 * reading is used twice, and {@link org.spile.geometry.kernel.measure.Written} turns numbers back into text, the same
 * way for every format. Nothing here knows of files, houses or shapes.
 */
package org.spile.geometry.kernel.measure;
