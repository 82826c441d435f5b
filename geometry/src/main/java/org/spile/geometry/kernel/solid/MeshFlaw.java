package org.spile.geometry.kernel.solid;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * What is wrong with a mesh, and where.
 *
 * @param kind what is wrong
 * @param triangles the triangles concerned, by their place in the list from 0; empty if there are none at all
 * @param at where, in mm: the middle of an edge or of a triangle, or a point as given if it is no place
 */
public record MeshFlaw(Kind kind, List<Integer> triangles, Vector3D at) {
    /** Takes a copy of the list. */
    public MeshFlaw {
        triangles = List.copyOf(triangles);
    }

    /** Ways for a mesh to be wrong: the first four make it useless, the others leave a surface without an inside. */
    public enum Kind {
        /** The mesh has no triangles. */
        EMPTY(true),
        /** A triangle names a point that isn't there. */
        NO_SUCH_POINT(true),
        /** A corner isn't a number or lies farther than 1 km from the origin. */
        NO_PLACE(true),
        /** A triangle is no higher than the contact tolerance over its longest side. */
        NO_AREA(true),
        /** An edge has no partner: the surface is open there, or more sheets meet than can bound a space. */
        OPEN_EDGE(false),
        /** Two neighbours run along their edge the same way: one of them shows its back. */
        TURNED_NEIGHBOUR(false),
        /** Two triangles meet along more than a common edge, so that the surface crosses, folds or touches itself. */
        SELF_CROSSING(false),
        /** A closed shell faces inwards where it should face outwards, or the other way round. */
        INSIDE_OUT(false);

        private final boolean useless;

        Kind(boolean useless) {
            this.useless = useless;
        }

        /**
         * Whether a mesh with such a flaw is refused.
         *
         * @return false if it can still be used as a surface
         */
        public boolean isUseless() {
            return useless;
        }
    }
}
