/**
 * Composes the sheets of a house: what is cut where, what is dimensioned, which findings are flagged.
 *
 * <p>A sheet is added by one class that implements {@link org.spile.exporters.sheets.Composer} and one line in {@link
 * org.spile.exporters.sheets.Sheets}; every format then has it. A composer draws parts as the kernel cuts them and asks
 * for dimensions between points of the model; places are found by {@code drawing.layout}.
 *
 * <p>May use {@code drawing}, the house and findings. Reckons nothing but where to cut. Read {@link
 * org.spile.exporters.sheets.Sheets} first.
 */
package org.spile.exporters.sheets;
