package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldStance;
import org.spile.geometry.house.told.ToldState;
import org.spile.geometry.kernel.measure.Stack;

/** The states of everything that moves, stance by stance: the first one's hold wherever another says nothing. */
final class Stances {
    private static final Set<String> STORE_WORDS = Set.of("full", "half", "empty");

    private final ToldHouse told;
    private final Readings readings;

    Stances(ToldHouse told, Readings readings) {
        this.told = told;
        this.readings = readings;
    }

    /** The stances' ids, home first. */
    List<String> ids() {
        return told.stances().isEmpty()
                ? List.of(House.AS_BUILT)
                : List.copyOf(told.stances().keySet());
    }

    boolean road(String stance) {
        return here(stance)
                .flatMap(ToldStance::road)
                .or(() -> home().flatMap(ToldStance::road))
                .orElse(false);
    }

    /** Whether a trailer that can be away is away. */
    boolean away(String stance, String trailer) {
        return state(stance, trailer).map(state -> state.word().equals("away")).orElse(false);
    }

    /** The position of a mover (mm or deg). */
    Stack position(String stance, MoverPlace mover) {
        Optional<ToldState> state = state(stance, mover.id());
        if (state.isEmpty()) {
            return Stack.ZERO;
        }
        if (state.get().position().isPresent()) {
            return readings.of(state.get().position().get());
        }
        return state.get().word().equals("open") ? mover.motion().full() : Stack.ZERO;
    }

    private Optional<ToldState> state(String stance, String id) {
        return here(stance)
                .map(s -> s.states().get(id))
                .or(() -> home().map(s -> s.states().get(id)));
    }

    private Optional<ToldStance> here(String stance) {
        return Optional.ofNullable(told.stances().get(stance));
    }

    private Optional<ToldStance> home() {
        return told.stances().values().stream().findFirst();
    }

    /** Says which states name nothing that has a state, or one it can't have. */
    void check(Map<String, MoverPlace> movers, Docking docking, Names names, Troubles troubles) {
        Map<String, List<String>> words = new LinkedHashMap<>();
        movers.keySet().forEach(id -> words.put(id, List.of("shut", "open")));
        told.movers().keySet().forEach(id -> words.putIfAbsent(id, List.of("shut", "open")));
        told.trailers().keySet().forEach(id -> words.put(id, List.of("docked", "away")));
        told.masses().forEach((id, mass) -> {
            if (mass.holds().isPresent()) {
                words.put(id, List.copyOf(new TreeSet<>(STORE_WORDS)));
            }
        });
        for (ToldStance stance : told.stances().values()) {
            for (Map.Entry<String, ToldState> state : stance.states().entrySet()) {
                check(state.getKey(), state.getValue(), words, movers, names, troubles);
            }
        }
        for (String trailer : told.trailers().keySet()) {
            for (String stance : ids()) {
                if (docking.toSite(trailer).isEmpty() && troubles.none() && !away(stance, trailer)) {
                    troubles.wrong(
                            "trailers." + trailer,
                            "nothing says where it stands in " + stance,
                            "Give it a dock:, or say " + trailer + ": away in that stance.");
                }
            }
        }
    }

    private void check(
            String id,
            ToldState state,
            Map<String, List<String>> words,
            Map<String, MoverPlace> movers,
            Names names,
            Troubles troubles) {
        List<String> allowed = words.get(id);
        if (allowed == null) {
            names.missing(state.path(), id, words.keySet(), "something that has a state", troubles);
            return;
        }
        MoverPlace mover = movers.get(id);
        if (state.position().isEmpty() && !allowed.contains(state.word())) {
            List<String> forms = new ArrayList<>(allowed);
            if (mover != null) {
                forms.add("a position");
            }
            troubles.wrong(
                    state.path(),
                    "\"" + state.word() + "\" is no state of " + id,
                    "Write " + String.join(", ", forms.subList(0, forms.size() - 1)) + " or "
                            + forms.get(forms.size() - 1) + ".");
        } else if (state.position().isPresent() && mover != null) {
            travel(state, mover, troubles);
        }
    }

    private void travel(ToldState state, MoverPlace mover, Troubles troubles) {
        double position = readings.now(state.position().orElseThrow()).value();
        double full = mover.motion().full().valueMm();
        if (position < 0 || position > full + AxisPlacing.SAME_PLACE_MM) {
            troubles.wrong(
                    state.path(),
                    AxisPlacing.number(position) + " " + mover.motion().unit() + " is beyond its travel",
                    mover.id() + " goes from 0 to " + AxisPlacing.number(full) + " "
                            + mover.motion().unit() + ".");
        }
    }
}
