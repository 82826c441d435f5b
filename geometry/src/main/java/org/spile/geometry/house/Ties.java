package org.spile.geometry.house;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Why two parts owe each other no clearance.
 *
 * <p>In this order: what is said of the two parts; parts of one thing; what is said of the two things; what holds for
 * their kinds. The rule, pair by pair:
 *
 * <ul>
 *   <li>a thing and what carries it: may touch. A room for service is freed by its own unit's carriers of nothing.
 *   <li>a thing and the surface, wall or roof that its place sets it against with 0: may touch; where that surface has a
 *       lining, the thing goes through the lining, to the surface.
 *   <li>a box and the unit it joins: may touch.
 *   <li>a run or line and what it starts from, ends at or takes off from: may touch; the leg at the joint may share room.
 *   <li>legs of one run or line: may touch; neighbours share room at their corner.
 *   <li>a leg and each lining, wall or roof that its middle line goes through or ends in: shares room, in its hole.
 *   <li>a device and the run it sits in: shares room.
 *   <li>a terminal, a mover or a leaf and the lining, wall or roof it is set in: shares room, in its hole.
 *   <li>a line and the rooms for service of the unit it serves: shares room, since it must leave there.
 *   <li>rooms for service among themselves and with their own unit: share room.
 *   <li>linings and shells among themselves: share room; fixtures among themselves: may touch.
 * </ul>
 */
final class Ties {
    private final Map<String, Tie> parts = new HashMap<>();
    private final Map<String, Tie> things = new HashMap<>();

    /** Ties two parts by their ids; an earlier tie that allows more stays. */
    void parts(String a, String b, String why, boolean overlaps) {
        put(parts, a, b, new Tie(why, overlaps));
    }

    /** Ties all material parts of two things by their paths; an earlier tie that allows more stays. */
    void things(String a, String b, String why, boolean overlaps) {
        put(things, a, b, new Tie(why, overlaps));
    }

    private static void put(Map<String, Tie> into, String a, String b, Tie tie) {
        into.merge(key(a, b), tie, (old, now) -> old.overlaps() || !now.overlaps() ? old : now);
    }

    private static String key(String a, String b) {
        return a.compareTo(b) < 0 ? a + "|" + b : b + "|" + a;
    }

    Optional<Tie> between(Part a, Part b) {
        Tie said = parts.get(key(a.id(), b.id()));
        if (said != null) {
            return Optional.of(said);
        }
        boolean service = a.kind() == PartKind.SERVICE || b.kind() == PartKind.SERVICE;
        if (a.thing().equals(b.thing())) {
            return Optional.of(sameThing(a));
        }
        if (a.kind() == PartKind.SERVICE && b.kind() == PartKind.SERVICE) {
            return Optional.of(new Tie("both are room for service", true));
        }
        Tie told = things.get(key(a.thing(), b.thing()));
        if (told != null && !service) {
            return Optional.of(told);
        }
        return kinds(a.kind(), b.kind());
    }

    private static Tie sameThing(Part a) {
        return switch (a.kind()) {
            case DUCT -> new Tie("same run", false);
            case LINE -> new Tie("same line", false);
            case UNIT, SERVICE, TERMINAL, FIXTURE, MOVER, LINING, SHELL -> new Tie("same thing", true);
        };
    }

    private static Optional<Tie> kinds(PartKind a, PartKind b) {
        if (built(a) && built(b)) {
            return Optional.of(new Tie("both are built in", true));
        }
        if (a == PartKind.FIXTURE && b == PartKind.FIXTURE) {
            return Optional.of(new Tie("both stay", false));
        }
        return Optional.empty();
    }

    private static boolean built(PartKind kind) {
        return kind == PartKind.LINING || kind == PartKind.SHELL;
    }
}
