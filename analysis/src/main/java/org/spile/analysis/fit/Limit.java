package org.spile.analysis.fit;

/**
 * One demand that a unit's place has to meet.
 *
 * @param id the same in every stance, as {@code fit.maker/units.cooler.clearance.top}
 * @param check who asks it, as {@code fit.maker}
 * @param says in people's words, as "20 mm free above cooler"
 * @param askedMm how much is asked; 0 where two things merely can't share room
 * @param source who asks
 */
public record Limit(String id, String check, String says, double askedMm, String source) {}
