package org.spile.exporters.drawing.layout;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A number on a dimension that is to be measured; the layout draws the tape and finds a place for the number.
 *
 * @param number as the sheet's list has it
 * @param from where the tape is hooked on (model mm)
 * @param to what it runs to; the same place where only this end is known
 * @param cut whether it starts beyond what is drawn, so that {@code from} is no end of it
 * @param part path of what is measured
 */
public record Balloon(int number, Vector2D from, Vector2D to, boolean cut, String part) {}
