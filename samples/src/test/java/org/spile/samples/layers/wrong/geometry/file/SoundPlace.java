package org.spile.samples.layers.wrong.geometry.file;

/**
 * A place in a file, for others to point at; sound in itself.
 *
 * @param line counted from 1
 */
public record SoundPlace(int line) {}
