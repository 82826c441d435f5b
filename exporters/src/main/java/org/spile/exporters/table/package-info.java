/**
 * Findings as people and programs read them: text for a terminal, one JSON object for everything else.
 *
 * <p>Read {@link org.spile.exporters.table.Report} first: what was asked of which house, and the answers. {@link
 * org.spile.exporters.table.ReportText} and {@link org.spile.exporters.table.ReportJson} write it; a further form is a
 * further class beside them. A {@link org.spile.exporters.table.Sum} is what {@code reckon} answers, in the same two forms. Numbers go through {@link org.spile.geometry.kernel.measure.Written} only.
 *
 * <p>May use {@code analysis.finding} and the kernel's measures; knows neither files nor the process. The JSON form is
 * published as {@code docs/reference/findings.schema.json}.
 */
package org.spile.exporters.table;
