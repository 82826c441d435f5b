package org.spile.exporters.drawing.layout;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A finding to be flagged; the layout draws the gap and finds a place for the flag.
 *
 * @param number the flag's number, as the sheet's list of findings has it
 * @param finding the finding's id
 * @param at first witness point (model mm)
 * @param to second witness point (model mm)
 * @param part path of the finding's subject
 */
record FlagRequest(int number, String finding, Vector2D at, Vector2D to, String part) {}
