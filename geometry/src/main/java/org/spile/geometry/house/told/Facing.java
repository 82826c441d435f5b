package org.spile.geometry.house.told;

import java.util.List;

/**
 * The way a unit blows, and where that puts its own faces.
 *
 * <p>A unit that blows up or down keeps its faces as the trailer's.
 */
enum Facing {
    FORWARD(0),
    LEFT(1),
    AFT(2),
    RIGHT(3),
    UPRIGHT(0);

    /** The level ways, each a quarter turn to the left of the one before; the faces of a unit that blows forward with them. */
    private static final List<String> WAYS = List.of("forward", "to the left", "aft", "to the right");

    private static final List<String> FACES = List.of("front", "left", "rear", "right");

    private final int quarterTurns;

    Facing(int quarterTurns) {
        this.quarterTurns = quarterTurns;
    }

    static Facing of(String blows) {
        return switch (blows) {
            case "left" -> LEFT;
            case "aft" -> AFT;
            case "right" -> RIGHT;
            case "up", "down" -> UPRIGHT;
            default -> FORWARD;
        };
    }

    /** Whether its long side lies across the trailer. */
    boolean across() {
        return this == LEFT || this == RIGHT;
    }

    /** Where one of its own faces looks, in the trailer's words. */
    String where(String face) {
        int index = FACES.indexOf(face);
        if (index < 0) {
            return face.equals("top") ? "above" : "below";
        }
        return WAYS.get((index + quarterTurns) % WAYS.size());
    }
}
