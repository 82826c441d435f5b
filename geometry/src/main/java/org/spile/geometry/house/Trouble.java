package org.spile.geometry.house;

/**
 * Something wrong with a house as told.
 *
 * @param path where, in the file's own words
 * @param says what is wrong, with the numbers
 * @param advice what to write instead
 * @param doubt whether it is a question rather than an error
 */
public record Trouble(String path, String says, String advice, boolean doubt) {}
