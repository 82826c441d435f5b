/**
 * Will it go in: clear depths, gaps, service rooms and headroom in every stance, with the tolerances stacked, and the single
 * changes that cure what fails.
 *
 * <p>{@link org.spile.analysis.fit.Fit} asks everything. Each question is one class that implements {@code FitCheck}, listed in
 * {@code FitChecks}. Geometry gives a gap's bounds and its two ends; the parts' {@linkplain org.spile.geometry.house.Flex
 * flex} at these ends gives the same gap as a sum of readings, and so its tolerance stack. A remedy is found from the stack or
 * from exit intervals, then tried on the whole house before it is offered.
 *
 * <p>Only static positions are held against each other here; what happens on the way between two stances is another question.
 */
package org.spile.analysis.fit;
