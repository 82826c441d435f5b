package org.spile.geometry.kernel.solid;

import java.util.List;

/** What became of the triangles handed in as a mesh. */
public sealed interface MeshResult {
    /**
     * A mesh that can be measured; {@link Mesh#flaws()} tells whether it bounds a space or is only a surface.
     *
     * @param mesh the mesh
     */
    record Sound(Mesh mesh) implements MeshResult {}

    /**
     * Triangles that make no mesh.
     *
     * @param flaws every flaw with its place: those that make triangles useless, then what else is wrong with the rest
     */
    record Refused(List<MeshFlaw> flaws) implements MeshResult {
        /** Takes a copy of the list. */
        public Refused {
            flaws = List.copyOf(flaws);
        }
    }
}
