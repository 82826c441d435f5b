package org.spile.geometry.house.spot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** A way along an axis of a frame, and the face it looks out of. */
public enum Way {
    /** To the coupling; out of the front. */
    FORWARD("forward", Axis.X, 1, "front"),
    /** Out of the rear. */
    AFT("aft", Axis.X, -1, "rear"),
    /** To the left when looking forward. */
    LEFT("left", Axis.Y, 1, "left"),
    /** To the right when looking forward. */
    RIGHT("right", Axis.Y, -1, "right"),
    /** Out of the top. */
    UP("up", Axis.Z, 1, "top"),
    /** Out of the bottom. */
    DOWN("down", Axis.Z, -1, "bottom");

    private final String word;
    private final Axis axis;
    private final int sign;
    private final String face;

    Way(String word, Axis axis, int sign, String face) {
        this.word = word;
        this.axis = axis;
        this.sign = sign;
        this.face = face;
    }

    /** The way's word in a path. */
    public String word() {
        return word;
    }

    /** The word of the face of a body that looks this way. */
    public String face() {
        return face;
    }

    /** Its axis. */
    public Axis axis() {
        return axis;
    }

    /** +1 along the axis, -1 against it. */
    public int sign() {
        return sign;
    }

    /** Unit vector. */
    public Vector3D unit() {
        return axis.unit().multiply(sign);
    }

    /** The other way along the same axis. */
    public Way opposite() {
        return of(axis, -sign);
    }

    /** The way along an axis, forwards if the sign is positive. */
    public static Way of(Axis axis, double sign) {
        return switch (axis) {
            case X -> sign > 0 ? FORWARD : AFT;
            case Y -> sign > 0 ? LEFT : RIGHT;
            case Z -> sign > 0 ? UP : DOWN;
        };
    }

    /** The way a vector points most. */
    public static Way nearest(Vector3D vector) {
        Axis axis = Axis.nearest(vector);
        return of(axis, axis.of(vector));
    }

    /** The way of that word, if there is one. */
    public static Optional<Way> named(String word) {
        for (Way way : values()) {
            if (way.word.equals(word)) {
                return Optional.of(way);
            }
        }
        return Optional.empty();
    }

    /** The way out of a body's face of that word (rear, front, left, right, bottom, top), if there is one. */
    public static Optional<Way> outOf(String face) {
        for (Way way : values()) {
            if (way.face.equals(face)) {
                return Optional.of(way);
            }
        }
        return Optional.empty();
    }

    /** The words of all ways. */
    public static List<String> words() {
        List<String> words = new ArrayList<>();
        for (Way way : values()) {
            words.add(way.word);
        }
        return words;
    }

    /** The words of a body's faces. */
    public static List<String> faces() {
        List<String> words = new ArrayList<>();
        for (Way way : values()) {
            words.add(way.face);
        }
        return words;
    }
}
