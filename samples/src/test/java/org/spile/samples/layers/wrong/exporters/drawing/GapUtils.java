package org.spile.samples.layers.wrong.exporters.drawing;

/** Has a name that says nothing. */
final class GapUtils {

    private GapUtils() {}
}
