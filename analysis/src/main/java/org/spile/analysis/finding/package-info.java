/**
 * The common form of every answer: a {@link org.spile.analysis.finding.Finding}, its verdict, remedies and source.
 *
 * <p>Every check, whatever its question, gives findings; screen, JSON, drawings and build file show nothing else. A check
 * is added by one class that implements {@link org.spile.analysis.finding.Check} and one line in the list of checks.
 *
 * <p>May use the geometry's house and kernel. Read {@link org.spile.analysis.finding.Finding} first.
 */
package org.spile.analysis.finding;
