package org.spile.geometry.kernel.solid;

/** On which side of a mesh a point lies. */
public enum Side {
    /** In the space that the mesh bounds. */
    INSIDE,
    /** Out of the space that the mesh bounds. */
    OUTSIDE,
    /** The mesh is not closed, faces the wrong way or crosses itself, so it has no inside. */
    NOT_KNOWN
}
