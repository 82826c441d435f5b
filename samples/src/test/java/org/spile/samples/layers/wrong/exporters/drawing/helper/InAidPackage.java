package org.spile.samples.layers.wrong.exporters.drawing.helper;

/** Lives in a package whose name says nothing. */
final class InAidPackage {

    private InAidPackage() {}
}
