/**
 * What a duct's section is worth: clear area, friction per metre, the round pipe it carries like, and the width it would
 * take.
 *
 * <p>One small class for each published formula, with its source and range; outside the range the answer says why there is
 * none. {@link org.spile.analysis.duct.StraightDuct} puts them together for one section and its air. Rectangles go by method
 * J (Jones' factor on the Reynolds number); the plain hydraulic diameter (D) and the handbooks' circular equivalent (H) are
 * heard where a duct is very flat.
 *
 * <p>{@link org.spile.analysis.duct.Duct} holds each run against the pipe it stands in for.
 *
 * <p>Knows straight pieces only; what bends, entries and grilles take is another question.
 */
package org.spile.analysis.duct;
