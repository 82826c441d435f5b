package org.spile.exporters.drawing;

/**
 * One line of the revision table.
 *
 * @param index letter of the revision
 * @param changed what changed
 * @param date when, as the author writes it
 * @param by whose hand
 */
public record Revision(String index, String changed, String date, String by) {}
