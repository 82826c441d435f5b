package org.spile.geometry.kernel.measure;

/** Which signs a number may have where it is asked for. */
public enum Sign {
    /** A coordinate, a temperature, a turn: either side of nothing. */
    ANY,
    /** A distance from a face, a flow: nothing or more, without a sign. */
    NOT_NEGATIVE,
    /** A size: more than nothing, at its least tolerance too. */
    POSITIVE
}
