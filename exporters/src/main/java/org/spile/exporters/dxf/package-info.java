/**
 * Sheets as one drawing exchange file, version R2000 (AC1015), in millimetres.
 *
 * <p>Read {@link org.spile.exporters.dxf.DxfWriter} first: it writes the sections in order, one class a section or kind of
 * entity. {@code ModelSpace} decides where each view lies in the one space they share: a plan at its true place, other views
 * below it, one row a sheet, all at 1:1. Each sheet is a layout with a viewport a view and its frame, notes and title block in paper space.
 *
 * <p>A dimension is written twice, as the format demands: as a definition (points, measured value, style) and as a block that
 * holds what the layout drew; both come from the same {@code Dimensioned}, so they agree.
 *
 * <p>Line patterns are stated at the narrow width and scaled on each entity ({@code 48}), so that views of different scales
 * show the same dashes on paper; hence {@code $LTSCALE} 1 and {@code $PSLTSCALE} 0.
 *
 * <p>May use {@code drawing}. Source: the published format reference; rules that readers enforce beyond it are noted where
 * they apply.
 */
package org.spile.exporters.dxf;
