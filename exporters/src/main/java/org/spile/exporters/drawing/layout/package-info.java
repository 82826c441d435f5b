/**
 * Finds places: for dimensions, names and flags in a view, for views and words on a sheet.
 *
 * <p>Read {@link org.spile.exporters.drawing.layout.ViewDraft} first: draw in model millimetres, ask for dimensions, names
 * and flags. Then {@link org.spile.exporters.drawing.layout.SheetLayout}: it picks paper and scale.
 * {@link org.spile.exporters.drawing.layout.Overlaps} measures a finished sheet and belongs into every composer's test.
 *
 * <p>Inside, {@code Ground} knows what is drawn where; {@code DimensionLayout} and {@code Pointing} try places on it, best
 * first, until one is free.
 *
 * <p>May use {@code drawing} only.
 */
package org.spile.exporters.drawing.layout;
