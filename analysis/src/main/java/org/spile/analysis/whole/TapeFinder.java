package org.spile.analysis.whole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.Finding;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.house.Scene;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.solid.Move;

/**
 * Finds where a reading lies in the house by what moves with it: let it grow a little, and the face that goes along is one
 * end of the tape; its value back from there, along the way it went, is the other.
 */
final class TapeFinder {
    /** So small that what only just meets still meets. */
    private static final double STEP = 0.01;

    private static final double STILL = 1e-4;
    private static final Pattern LAYER = Pattern.compile("(.*\\.(linings|layers))\\[(\\d+)]\\..*");
    private static final Pattern CLEAR_SIZE = Pattern.compile("(runs\\.[^.]*)\\.path\\[\\d+]\\.(wide|high|round)");

    private final House house;
    private final Map<String, Map<String, Landmark>> known = new HashMap<>();

    TapeFinder(House house) {
        this.house = house;
    }

    /**
     * A landmark that moves.
     *
     * @param mark before
     * @param ways how far its sides go for one more of the reading: least x, greatest x, least y, ...
     */
    private record Moved(Landmark mark, List<Double> ways) {
        double least(int axis) {
            return ways.get(2 * axis);
        }

        double most(int axis) {
            return ways.get(2 * axis + 1);
        }

        double moves(int axis) {
            return Math.max(Math.abs(least(axis)), Math.abs(most(axis)));
        }
    }

    /** Where the tape lies for a reading that a finding rests on; empty where nothing moves with it. */
    Optional<Tape> find(String path, Finding finding) {
        Reading reading = house.readings().get(path);
        if (reading == null || finding.at().isEmpty() || finding.stance().isEmpty()) {
            return Optional.empty();
        }
        for (double step : new double[] {STEP, -STEP}) {
            if (house.with(Map.of(path, reading.value() + step)) instanceof Resolved.Sound grown) {
                return found(reading, step, grown.house(), finding);
            }
        }
        return Optional.empty();
    }

    private Optional<Tape> found(Reading reading, double step, House grown, Finding finding) {
        String stance = finding.stance().get(0);
        Scene scene = house.scene(stance);
        Map<String, Landmark> after = Landmark.of(grown.scene(stance));
        List<Moved> moved = new ArrayList<>();
        known.computeIfAbsent(stance, none -> Landmark.of(scene)).forEach((name, mark) -> {
            if (after.containsKey(name)) {
                moved(mark, after.get(name), step).ifPresent(moved::add);
            }
        });
        Comparator<Moved> best = Comparator.comparingInt(
                        (Moved each) -> -each.mark().owned(reading.path()))
                .thenComparing(each -> !each.mark().bounds())
                .thenComparingDouble(each -> each.mark().awayFrom(witness(each.mark(), stance, finding)))
                .thenComparing(each -> each.mark().id());
        return moved.stream().min(best).map(each -> tape(reading, each, stance, finding));
    }

    /** The witness point that lies nearer to a landmark, in its trailer's frame. */
    private Vector3D witness(Landmark mark, String stance, Finding finding) {
        Move home = Landmark.home(house.scene(stance), mark.trailer());
        Vector3D at = home.apply(finding.at().orElseThrow());
        Vector3D to = finding.to().map(home::apply).orElse(at);
        return mark.awayFrom(to) < mark.awayFrom(at) ? to : at;
    }

    private static Optional<Moved> moved(Landmark was, Landmark is, double step) {
        List<Double> ways = new ArrayList<>();
        boolean moves = false;
        for (int axis = 0; axis < 3; axis++) {
            for (boolean greatest : new boolean[] {false, true}) {
                double way = (is.side(axis, greatest) - was.side(axis, greatest)) / step;
                ways.add(way);
                moves |= Math.abs(way) > STILL;
            }
        }
        return moves ? Optional.of(new Moved(was, ways)) : Optional.empty();
    }

    private Tape tape(Reading reading, Moved moved, String stance, Finding finding) {
        Landmark mark = moved.mark();
        Move home = Landmark.home(house.scene(stance), mark.trailer());
        Vector3D at = home.apply(finding.at().orElseThrow());
        Vector3D to = finding.to().map(home::apply).orElse(at);
        int axis = axis(moved, to.subtract(at));
        Ends ends = ends(reading, moved, axis, List.of(coordinate(at, axis), coordinate(to, axis)));
        Vector3D beside = mark.nearest(witness(mark, stance, finding));
        Move back = home.inverse();
        return new Tape(
                stance,
                mark.trailer(),
                back.apply(on(beside, axis, ends.from())),
                back.apply(on(beside, axis, ends.to())),
                mark.box());
    }

    /** The two ends along an axis. */
    private record Ends(double from, double to) {}

    private Ends ends(Reading reading, Moved moved, int axis, List<Double> witnesses) {
        double low = moved.mark().side(axis, false);
        double high = moved.mark().side(axis, true);
        double value = reading.kind() == Kind.LENGTH ? reading.value() : 0;
        double least = moved.least(axis);
        double most = moved.most(axis);
        if (is(most - least, 1) && least < -STILL && most > STILL) {
            return new Ends((low + high - value) / 2, (low + high + value) / 2);
        }
        boolean atMost = atMost(moved, axis, witnesses);
        double way = atMost ? most : least;
        double inward = moved.mark().lining() ? (atMost ? 1 : -1) : Math.signum(way);
        double to = (atMost ? high : low) - inward * between(reading.path(), moved.mark());
        boolean halves =
                is(Math.abs(way), 0.5) && CLEAR_SIZE.matcher(reading.path()).matches();
        return is(Math.abs(way), 1) || halves ? new Ends(to - Math.signum(way) * value, to) : new Ends(to, to);
    }

    /** Which side it is that the tape runs to. */
    private static boolean atMost(Moved moved, int axis, List<Double> witnesses) {
        if (moved.mark().lining()) {
            return away(moved.mark().side(axis, true), witnesses)
                    < away(moved.mark().side(axis, false), witnesses);
        }
        boolean leastStays = Math.abs(moved.least(axis)) < STILL;
        return Math.abs(moved.most(axis)) > STILL && (leastStays || moved.most(axis) < 0);
    }

    private static double away(double side, List<Double> witnesses) {
        return witnesses.stream()
                .mapToDouble(witness -> Math.abs(witness - side))
                .min()
                .orElseThrow();
    }

    /** The axis of the gap if something moves along it, else the one along which the most moves. */
    private static int axis(Moved moved, Vector3D gap) {
        List<Double> along = List.of(Math.abs(gap.getX()), Math.abs(gap.getY()), Math.abs(gap.getZ()));
        double longest = along.stream().max(Double::compare).orElseThrow();
        return List.of(2, 1, 0).stream()
                .max(Comparator.comparing((Integer axis) -> moved.moves(axis) > STILL && along.get(axis) == longest)
                        .thenComparing(axis -> Math.rint(moved.moves(axis) / STILL))
                        .thenComparing(axis -> axis))
                .orElseThrow();
    }

    /**
     * What lies between the face that moves and what is measured (mm): before a lining the linings nearer to the space, and
     * before a bare surface all of them; beyond a wrap the wraps further out, and beyond a clear size all of them.
     */
    private double between(String path, Landmark mark) {
        Matcher layer = LAYER.matcher(path);
        Matcher size = CLEAR_SIZE.matcher(path);
        if (layer.matches()) {
            int place = Integer.parseInt(layer.group(3));
            boolean linings = layer.group(2).equals("linings");
            return thick(layer.group(1), linings ? 0 : place, linings ? place : Integer.MAX_VALUE);
        }
        if (size.matches()) {
            return thick(size.group(1) + ".layers", 0, Integer.MAX_VALUE);
        }
        return mark.lining() ? thick(mark.id() + ".linings", 0, Integer.MAX_VALUE) : 0;
    }

    /** How thick the layers of a list are between two places, both left out. */
    private double thick(String list, int after, int before) {
        double thick = 0;
        for (Reading reading : house.readings().values()) {
            Matcher layer = LAYER.matcher(reading.path());
            if (layer.matches() && layer.group(1).equals(list)) {
                int place = Integer.parseInt(layer.group(3));
                thick += place > after && place < before ? reading.value() : 0;
            }
        }
        return thick;
    }

    private static boolean is(double way, double wanted) {
        return Math.abs(way - wanted) < STILL;
    }

    private static double coordinate(Vector3D point, int axis) {
        return axis == 0 ? point.getX() : axis == 1 ? point.getY() : point.getZ();
    }

    private static Vector3D on(Vector3D point, int axis, double value) {
        return Vector3D.of(
                axis == 0 ? value : point.getX(), axis == 1 ? value : point.getY(), axis == 2 ? value : point.getZ());
    }
}
