package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Travels.Mover;

/**
 * From the first stance to another, one mover after the other: a drawer behind a hatch comes out once the hatch is open.
 *
 * <p>Looked for is an order in which nothing fails, the file's own first; if there is none, the file's order tells what does.
 */
final class Sequence {
    /** Orders are tried for so many movers at most; with more, the file's order alone. */
    private static final int MOST_MOVERS = 6;

    private final House house;
    private final String stance;
    private final Map<String, Double> before;
    private final Map<String, Double> after;
    private final String check;
    private final Map<String, Way> known = new HashMap<>();

    Sequence(House house, String stance, Map<String, Double> before, Map<String, Double> after, String check) {
        this.house = house;
        this.stance = stance;
        this.before = before;
        this.after = after;
        this.check = check;
    }

    /** A way for each mover, in the order in which they go. */
    List<Way> ways(List<Mover> movers) {
        if (movers.size() <= MOST_MOVERS) {
            Optional<List<Way>> free = free(List.of(), movers);
            if (free.isPresent()) {
                return free.get();
            }
        }
        List<Way> ways = new ArrayList<>();
        List<Mover> gone = new ArrayList<>();
        for (Mover mover : movers) {
            ways.add(next(gone, mover));
            gone.add(mover);
        }
        return ways;
    }

    private Optional<List<Way>> free(List<Mover> gone, List<Mover> waiting) {
        if (waiting.isEmpty()) {
            return Optional.of(List.of());
        }
        for (Mover mover : waiting) {
            Way way = next(gone, mover);
            if (way.answer().finding().verdict() != Verdict.FAILS) {
                List<Mover> others =
                        waiting.stream().filter(other -> !other.equals(mover)).toList();
                List<Mover> further = new ArrayList<>(gone);
                further.add(mover);
                Optional<List<Way>> rest = free(further, others);
                if (rest.isPresent()) {
                    List<Way> all = new ArrayList<>(List.of(way));
                    all.addAll(rest.get());
                    return Optional.of(all);
                }
            }
        }
        return Optional.empty();
    }

    /** A mover's way once others have gone theirs. */
    private Way next(List<Mover> gone, Mover mover) {
        String key = gone.stream().map(Mover::id).sorted().collect(Collectors.joining(" ")) + "|" + mover.id();
        Way there = known.get(key);
        if (there == null) {
            Map<String, Double> positions = new LinkedHashMap<>(before);
            gone.forEach(other -> positions.put(other.id(), after.get(other.id())));
            double one = before.get(mover.id());
            double other = after.get(mover.id());
            String once = gone.isEmpty()
                    ? ""
                    : ", once " + gone.stream().map(Mover::title).collect(Collectors.joining(" and "))
                            + (gone.size() == 1 ? " has moved" : " have moved");
            there = Way.of(house, stance, positions, mover, Math.min(one, other), Math.max(one, other), check, once);
            known.put(key, there);
        }
        return there;
    }
}
