/**
 * The paper model: sheets, views at a scale, marks on layers, dimensions tied to points of the model. No format, no house.
 *
 * <p>To compose a sheet read {@code layout.ViewDraft} first, then {@code layout.SheetLayout}: they turn what is drawn and
 * asked for into {@link org.spile.exporters.drawing.Sheet}s. To write a format read
 * {@link org.spile.exporters.drawing.SheetWriter}, then {@link org.spile.exporters.drawing.Mark}.
 *
 * <p>Marks of a view are in model millimetres at 1:1, marks of a sheet in paper millimetres; widths, text heights and arrows
 * are paper millimetres in both. {@link org.spile.exporters.drawing.Layer} is the one place where layer names, line types,
 * widths and inks are decided; {@link org.spile.exporters.drawing.Lettering} the one place where words are measured.
 *
 * <p>May use {@code geometry} for numbers and vectors, and a font reader. Knows nothing of findings, files or formats.
 */
package org.spile.exporters.drawing;
