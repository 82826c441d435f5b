package org.spile.samples.layers.wrong.exporters.drawing.common;

/** Lives in a package whose name says nothing. */
final class InSharedPackage {

    private InSharedPackage() {}
}
