package org.spile.samples.layers.wrong.exporters.drawing.misc;

/** Lives in a package whose name says nothing. */
final class InMiscPackage {

    private InMiscPackage() {}
}
