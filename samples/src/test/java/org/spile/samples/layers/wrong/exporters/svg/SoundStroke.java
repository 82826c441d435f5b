package org.spile.samples.layers.wrong.exporters.svg;

/**
 * A stroke, sound in itself.
 *
 * @param widthMm on paper
 */
public record SoundStroke(double widthMm) {}
