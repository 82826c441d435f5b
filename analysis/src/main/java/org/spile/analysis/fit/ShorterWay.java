package org.spile.analysis.fit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Resolved;
import org.spile.geometry.house.Travels.Mover;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldMover;
import org.spile.geometry.house.told.ToldOpening;
import org.spile.geometry.house.told.ToldSlide;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Written;

/**
 * How far something may open before it comes too near: the longest way that passes, to 0.1 of its unit, tried on the house.
 *
 * <p>What comes nearest on a way from its start never gets farther as the way gets longer, so halving finds the end.
 */
final class ShorterWay {
    private static final double TENTHS = 10;

    private final House house;

    ShorterWay(House house) {
        this.house = house;
    }

    /** A shorter way that passes, if any does; empty if nothing short is worth having. */
    Optional<Remedy> of(Way way) {
        Optional<Reading> limit = limit(way);
        if (limit.isEmpty() || !passes(way, house, tenth(way, 1))) {
            return Optional.empty();
        }
        long free = 1;
        long blocked = Math.round((way.to() - way.from()) * TENTHS);
        while (blocked - free > 1) {
            long middle = (free + blocked) / 2;
            if (passes(way, house, tenth(way, middle))) {
                free = middle;
            } else {
                blocked = middle;
            }
        }
        double end = tenth(way, free);
        double value = limit.get().value() - (way.to() - end);
        boolean holds = value > 0
                && house.with(Map.of(limit.get().path(), value)) instanceof Resolved.Sound sound
                && passes(way, sound.house(), end);
        return holds ? Optional.of(remedy(way, limit.get(), value)) : Optional.empty();
    }

    private static double tenth(Way way, long tenths) {
        return way.from() + tenths / TENTHS;
    }

    private static boolean passes(Way way, House in, double to) {
        return way.again(in, to).answer().finding().verdict() == Verdict.PASSES;
    }

    private static Remedy remedy(Way way, Reading limit, double value) {
        String now = Written.number(value, 1) + " " + way.mover().unit();
        return new Remedy(
                "let " + way.mover().title() + " go no further than " + now + ", instead of "
                        + Written.number(limit.value(), 1) + " " + way.mover().unit(),
                List.of(limit.path() + "=" + now));
    }

    /** The reading that says where the way ends: in its stance, or of its hinge, or of the last leg of its slide. */
    private Optional<Reading> limit(Way way) {
        ToldHouse told = house.told();
        String id = way.mover().id();
        return Optional.ofNullable(told.stances().get(way.stance()))
                .flatMap(stance -> Optional.ofNullable(stance.states().get(id)))
                .flatMap(state -> state.position())
                .or(() -> full(told, way.mover()))
                .map(house::now)
                .filter(reading -> house.readings().containsKey(reading.path()));
    }

    private static Optional<Reading> full(ToldHouse told, Mover mover) {
        ToldMover own = told.movers().get(mover.id());
        if (own != null) {
            return own.hinge().map(hinge -> hinge.by()).or(() -> last(own.slides()));
        }
        return told.rooms().values().stream()
                .flatMap(room -> room.openings().values().stream())
                .filter(opening -> opening.placed().path().equals(mover.path()))
                .flatMap(ShorterWay::full)
                .findFirst();
    }

    private static Stream<Reading> full(ToldOpening opening) {
        return Stream.concat(
                opening.hinge().map(hinge -> hinge.by()).stream(), opening.slides().map(ToldSlide::travel).stream());
    }

    private static Optional<Reading> last(List<ToldSlide> slides) {
        return slides.isEmpty()
                ? Optional.empty()
                : Optional.of(slides.get(slides.size() - 1).travel());
    }
}
