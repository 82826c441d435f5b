package org.spile.analysis.whole;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.spile.analysis.finding.Check;
import org.spile.analysis.whole.OpenQuestion.Need;
import org.spile.geometry.house.told.Placed;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldRoom;
import org.spile.geometry.house.told.ToldTerminal;
import org.spile.geometry.house.told.ToldTrailer;
import org.spile.geometry.house.told.ToldUnit;

/** The questions that a house file can ask and that aren't worked out yet. A line leaves when its check comes. */
final class Unanswered {
    private Unanswered() {}

    static List<Check> questions() {
        return List.of(
                new OpenQuestion("remove", Unanswered::remove),
                new OpenQuestion("air", Unanswered::air),
                new OpenQuestion("moisture", Unanswered::moisture),
                new OpenQuestion("heat", Unanswered::heat),
                new OpenQuestion("tow", Unanswered::tow));
    }

    /** A file has no order of its own, so what is named first mustn't depend on it. */
    private static <T> Collection<T> byName(Map<String, T> things) {
        return new TreeMap<>(things).values();
    }

    private static Optional<Need> remove(ToldHouse told) {
        if (told.units().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Need(
                "units", "Whether " + counted(told.units().size(), "unit") + " can be taken out again", List.of()));
    }

    private static Optional<Need> air(ToldHouse told) {
        if (told.runs().isEmpty()) {
            return Optional.empty();
        }
        List<String> missing = new ArrayList<>();
        for (ToldTerminal terminal : byName(told.terminals())) {
            String path = terminal.placed().path();
            addIf(missing, terminal.kind().equals("filter") && terminal.clean().isEmpty(), path + ".clean");
            addIf(missing, terminal.kind().equals("flap") && terminal.opens().isEmpty(), path + ".opens");
            addIf(missing, terminal.kind().equals("grille") && terminal.free().isEmpty(), path + ".free");
        }
        addIf(missing, told.limits().flow().isEmpty(), "limits.flow");
        boolean fan =
                told.units().values().stream().anyMatch(unit -> !unit.fan().isEmpty());
        addIf(missing, !fan, "units.*.fan");
        String question =
                "How much air " + counted(told.runs().size(), "run") + " will carry, at what pressure and noise,";
        return Optional.of(new Need("runs", question, missing));
    }

    private static Optional<Need> moisture(ToldHouse told) {
        if (told.climate().isEmpty() && told.runs().isEmpty()) {
            return Optional.empty();
        }
        List<String> missing = new ArrayList<>();
        addIf(missing, told.climate().isEmpty(), "climate");
        return Optional.of(new Need("climate", "Whether ducts, pipes and linings sweat", missing));
    }

    private static Optional<Need> heat(ToldHouse told) {
        boolean conditioned = told.units().values().stream()
                .anyMatch(unit -> unit.cooling().isPresent() || unit.heating().isPresent());
        if (!conditioned) {
            return Optional.empty();
        }
        List<String> missing = new ArrayList<>();
        addIf(missing, told.climate().isEmpty(), "climate");
        for (ToldTrailer trailer : byName(told.trailers())) {
            addIf(missing, trailer.walls().isEmpty(), trailer.deck().path() + ".walls");
            addIf(missing, trailer.floor().isEmpty(), trailer.deck().path() + ".floor");
        }
        long heated =
                told.rooms().values().stream().filter(Unanswered::givesHeat).count();
        String question = "Whether the units heat and cool enough for "
                + counted(told.rooms().size(), "room") + " (" + heated + " with people or heat of their own)";
        return Optional.of(new Need("rooms", question, missing));
    }

    private static Optional<Need> tow(ToldHouse told) {
        if (told.trailers().isEmpty()) {
            return Optional.empty();
        }
        List<String> missing = new ArrayList<>();
        for (ToldTrailer trailer : byName(told.trailers())) {
            String path = trailer.deck().path();
            addIf(missing, trailer.coupling().isEmpty(), path + ".coupling");
            addIf(missing, trailer.axles().isEmpty(), path + ".axles");
        }
        addIf(missing, told.masses().isEmpty(), "masses");
        for (ToldUnit unit : byName(told.units())) {
            addIf(missing, unit.joins().isEmpty() && unit.placed().mass().isEmpty(), massOf(unit.placed()));
        }
        String question =
                "What coupling and axles of " + counted(told.trailers().size(), "trailer") + " carry";
        return Optional.of(new Need("trailers", question, missing));
    }

    private static boolean givesHeat(ToldRoom room) {
        return room.people().isPresent() || room.heat().isPresent();
    }

    private static String massOf(Placed placed) {
        return placed.path() + ".mass";
    }

    private static void addIf(List<String> missing, boolean absent, String path) {
        if (absent) {
            missing.add(path);
        }
    }

    private static String counted(long count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
