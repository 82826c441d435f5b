/**
 * Ducts worked out: sections, legs and the corners between them, with what is clear inside and what is taken outside.
 *
 * <p>Knows shapes only; what a bend loses or how a piece is cut from sheet is elsewhere. Read {@link
 * org.spile.geometry.house.duct.DuctRun} first.
 */
package org.spile.geometry.house.duct;
