package org.spile.analysis.finding;

/** A place on a run (station, mm from its start) or of a mover (its position). */
public record Where(String thing, String piece, Quantity position) {}
