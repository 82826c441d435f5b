package org.spile.samples.layers.wrong.geometry.stray;

/** Lives in a package that no row names. */
final class Rowless {

    private Rowless() {}
}
