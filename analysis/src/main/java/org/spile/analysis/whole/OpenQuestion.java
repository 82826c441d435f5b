package org.spile.analysis.whole;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.spile.analysis.finding.Check;
import org.spile.analysis.finding.Finding;
import org.spile.geometry.house.House;
import org.spile.geometry.house.told.ToldHouse;

/**
 * A question whose values are read and kept, but which isn't worked out yet: one finding, not known, that says what it
 * will need. It arises only where the house file has something to ask about.
 */
final class OpenQuestion implements Check {
    private static final int NAMED = 4;

    private final String name;
    private final Function<ToldHouse, Optional<Need>> need;

    OpenQuestion(String name, Function<ToldHouse, Optional<Need>> need) {
        this.name = name;
        this.need = need;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<Finding> findings(House house) {
        return need.apply(house.told()).map(this::finding).stream().toList();
    }

    private Finding finding(Need wanted) {
        String missing = wanted.missing().isEmpty()
                ? "every value it needs is there"
                : "still missing for it: " + shortened(wanted.missing());
        return Finding.open(
                name,
                wanted.subject(),
                wanted.missing().stream().findFirst(),
                wanted.question() + " isn't worked out yet; what the house file says of it is read and kept, and "
                        + missing + ".");
    }

    private static String shortened(List<String> paths) {
        String named = String.join(", ", paths.subList(0, Math.min(NAMED, paths.size())));
        int more = paths.size() - NAMED;
        return more > 0 ? named + " and " + more + " more" : named;
    }

    /**
     * What a question is about and what it lacks.
     *
     * @param subject path of what it asks about
     * @param question as "Whether each room gets its air"
     * @param missing paths of values it will need that the file doesn't have, those that settle most first
     */
    record Need(String subject, String question, List<String> missing) {
        Need {
            missing = List.copyOf(missing);
        }
    }
}
