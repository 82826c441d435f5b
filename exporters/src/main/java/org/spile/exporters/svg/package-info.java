/**
 * Sheets as SVG: one file a sheet, at true physical size.
 *
 * <p>Read {@link org.spile.exporters.svg.SvgWriter} first. One user unit is one millimetre on paper; y is turned once, here.
 * Groups are named after views, layers and the house file's parts. Arrows and hatching are real paths: markers, patterns and
 * clip paths get lost in many programs.
 *
 * <p>May use {@code drawing} and the JDK's XML writer. Decides no colour, width or name of its own.
 */
package org.spile.exporters.svg;
