package org.spile.geometry.kernel.solid;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * What is wrong with a mesh, and where.
 *
 * @param kind what is wrong
 * @param triangles the triangles concerned, by their place in the list from 0; empty if there are none at all
 * @param at where, in mm: the middle of an edge, of a triangle or of what two triangles share; a point as given if it
 *     is no place; not a number if there is no such point
 */
public record MeshFlaw(Kind kind, List<Integer> triangles, Vector3D at) {
    /** Takes a copy of the list. */
    public MeshFlaw {
        triangles = List.copyOf(triangles);
    }

    /** What a flaw does to a mesh. */
    public enum Effect {
        /** The mesh is refused. */
        USELESS,
        /** The mesh is a surface: it can be measured to, but what is inside is not known. */
        NO_INSIDE,
        /** Worth a look, but the mesh bounds a space all the same. */
        NOTED
    }

    /** Ways for a mesh to be wrong. */
    public enum Kind {
        /** The mesh has no triangles. */
        EMPTY(Effect.USELESS),
        /** A triangle names a point that isn't there. */
        NO_SUCH_POINT(Effect.USELESS),
        /** A corner isn't a number or lies farther than 1 km from the origin. */
        NO_PLACE(Effect.USELESS),
        /** A triangle is no higher than the contact tolerance over its longest side. */
        NO_AREA(Effect.USELESS),
        /** An edge has one triangle only: the surface is open there. */
        OPEN_EDGE(Effect.NO_INSIDE),
        /** Three or more triangles meet at an edge and can't be told apart by twos, as fin and sheet. */
        CROWDED_EDGE(Effect.NO_INSIDE),
        /** Two neighbours run along their edge the same way: one of them shows its back. */
        TURNED_NEIGHBOUR(Effect.NO_INSIDE),
        /** Two triangles meet along more than a common edge, so that the surface crosses, folds or touches itself. */
        SELF_CROSSING(Effect.NO_INSIDE),
        /** A closed shell faces inwards where it should face outwards, or the other way round. */
        INSIDE_OUT(Effect.NO_INSIDE),
        /** Four or more triangles meet at an edge, two by two: parts of the space touch along it. */
        TOUCHING_EDGE(Effect.NOTED),
        /** Fans of triangles meet at one point only, as in a bow tie: parts of the space touch there. */
        BOW_TIE(Effect.NOTED);

        private final Effect effect;

        Kind(Effect effect) {
            this.effect = effect;
        }

        /**
         * What such a flaw does to a mesh.
         *
         * @return the effect
         */
        public Effect effect() {
            return effect;
        }
    }
}
