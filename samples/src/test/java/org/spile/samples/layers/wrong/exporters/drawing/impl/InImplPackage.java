package org.spile.samples.layers.wrong.exporters.drawing.impl;

/** Lives in a package whose name says nothing. */
final class InImplPackage {

    private InImplPackage() {}
}
