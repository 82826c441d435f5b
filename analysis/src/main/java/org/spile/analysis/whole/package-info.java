/**
 * What stands above the single questions: the list of all checks, and what needs several questions at once.
 *
 * <p>Read {@link org.spile.analysis.whole.Checks} first: a new check is one class in its question's package and one line
 * there. May use every other package of the analysis; none of them uses this one.
 */
package org.spile.analysis.whole;
