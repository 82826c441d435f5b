package org.spile.samples.layers.wrong.exporters.drawing.util;

/** Lives in a package whose name says nothing. */
final class InToolPackage {

    private InToolPackage() {}
}
