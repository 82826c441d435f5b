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
    private final Map<String, Answer> known = new HashMap<>();

    Sequence(House house, String stance, Map<String, Double> before, Map<String, Double> after, String check) {
        this.house = house;
        this.stance = stance;
        this.before = before;
        this.after = after;
        this.check = check;
    }

    /** An answer for each mover, in the order in which they go. */
    List<Answer> answers(List<Mover> movers) {
        if (movers.size() <= MOST_MOVERS) {
            Optional<List<Answer>> free = free(List.of(), movers);
            if (free.isPresent()) {
                return free.get();
            }
        }
        List<Answer> answers = new ArrayList<>();
        List<Mover> gone = new ArrayList<>();
        for (Mover mover : movers) {
            answers.add(next(gone, mover));
            gone.add(mover);
        }
        return answers;
    }

    private Optional<List<Answer>> free(List<Mover> gone, List<Mover> waiting) {
        if (waiting.isEmpty()) {
            return Optional.of(List.of());
        }
        for (Mover mover : waiting) {
            Answer answer = next(gone, mover);
            if (answer.finding().verdict() != Verdict.FAILS) {
                List<Mover> others =
                        waiting.stream().filter(other -> !other.equals(mover)).toList();
                List<Mover> further = new ArrayList<>(gone);
                further.add(mover);
                Optional<List<Answer>> rest = free(further, others);
                if (rest.isPresent()) {
                    List<Answer> all = new ArrayList<>(List.of(answer));
                    all.addAll(rest.get());
                    return Optional.of(all);
                }
            }
        }
        return Optional.empty();
    }

    /** A mover's way once others have gone theirs. */
    private Answer next(List<Mover> gone, Mover mover) {
        String key = gone.stream().map(Mover::id).sorted().collect(Collectors.joining(" ")) + "|" + mover.id();
        Answer there = known.get(key);
        if (there == null) {
            Map<String, Double> positions = new LinkedHashMap<>(before);
            gone.forEach(other -> positions.put(other.id(), after.get(other.id())));
            double one = before.get(mover.id());
            double other = after.get(mover.id());
            String once = gone.isEmpty()
                    ? ""
                    : ", once " + gone.stream().map(Mover::title).collect(Collectors.joining(" and ")) + " has moved";
            there = Journey.ofMover(house, stance, positions, mover, Math.min(one, other), Math.max(one, other))
                    .worst(check, once);
            known.put(key, there);
        }
        return there;
    }
}
