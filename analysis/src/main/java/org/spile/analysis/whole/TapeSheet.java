package org.spile.analysis.whole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Verdict;
import org.spile.geometry.house.House;

/**
 * What to measure before building: the dimensions that decide the findings nearest to turning, in walking order.
 *
 * <p>A finding could turn if its readings together may be off by more than its margin. Of those the tightest are taken until
 * the sheet is full; each brings every reading that must be measured to settle it, as
 * measuring some of them would not.
 *
 * @param stops where to stand, in walking order, each with its rows
 * @param decided the findings that the sheet decides, the tightest first
 * @param left how many findings could turn too and didn't find room
 */
public record TapeSheet(List<Stop> stops, List<Finding> decided, int left) {
    /** Rows that one upright sheet of A4 holds together with its picture. */
    public static final int ROOM = 8;

    /** So many findings a sheet decides at most: each has a letter on it. */
    static final int MOST_FINDINGS = 20;

    private static final Comparator<TapeRow> FIRST_TO_MEASURE = Comparator.comparing(TapeRow::trust)
            .thenComparingDouble(row -> -row.takesMm())
            .thenComparing(TapeRow::path);

    /** What to do with the values, one sentence each. */
    public static final List<String> NOTES = List.of(
            "Type each value into the house file at its path as VALUE ± TAPE measured, or behind --set to try it.",
            "Known as exactly as needed, the verdicts stand. Under ± 0.5 mm a tape won't do: take a rule, a calliper, a trial piece.");

    /** Copies the lists. */
    public TapeSheet {
        stops = List.copyOf(stops);
        decided = List.copyOf(decided);
    }

    /**
     * A place to stand.
     *
     * @param title as "lobby-top, in bunk"
     * @param rows in the order in which a tape comes by: floor to ceiling, then rear to front
     */
    public record Stop(String title, List<TapeRow> rows) {
        /** Copies the list. */
        public Stop {
            rows = List.copyOf(rows);
        }
    }

    /**
     * The sheet of a house.
     *
     * @param findings its findings; remedies aren't needed
     * @param room how many rows the sheet may have, 1 or more
     */
    public static TapeSheet of(House house, List<Finding> findings, int room) {
        if (room < 1) {
            throw new IllegalArgumentException("a sheet has room for one row at least, not " + room);
        }
        List<Unsettled> open = findings.stream()
                .flatMap(finding -> Unsettled.of(finding).stream())
                .sorted(Unsettled.TIGHTEST)
                .toList();
        List<Unsettled> taken = new ArrayList<>();
        Set<String> paths = chosen(open, taken, room);
        List<TapeRow> rows = ranked(rows(house, taken, List.copyOf(paths)));
        return new TapeSheet(
                new WalkingOrder(house).stops(rows),
                taken.stream().map(Unsettled::finding).toList(),
                open.size() - taken.size());
    }

    /** Every row, in walking order. */
    public List<TapeRow> rows() {
        return stops.stream().flatMap(stop -> stop.rows().stream()).toList();
    }

    /** The letter that stands for a finding on the sheet: A for the tightest. */
    public String letter(Finding finding) {
        for (int i = 0; i < decided.size(); i++) {
            if (decided.get(i).id().equals(finding.id())) {
                return String.valueOf((char) ('A' + i));
            }
        }
        throw new IllegalArgumentException("the sheet doesn't decide " + finding.id());
    }

    /** The letters of all that a row decides, as {@code A C D}. */
    public String letters(TapeRow row) {
        return String.join(
                " ", row.decides().stream().map(each -> letter(each.finding())).toList());
    }

    /** What the whole comes to, one sentence. */
    public String says() {
        int rows = rows().size();
        if (rows == 0) {
            return "Nothing needs measuring: no finding could turn within what its dimensions may be off.";
        }
        String decides = rows
                + (rows == 1 ? " dimension decides " : " dimensions decide ")
                + decided.size()
                + (decided.size() == 1 ? " finding" : " findings");
        return decides
                + (left == 0
                        ? "; no other could turn within what its dimensions may be off."
                        : "; " + left + " more could turn and will come up when these are settled.");
    }

    /**
     * The tightest findings whose readings have room together; the very tightest with as many as have room. What passes doesn't
     * take the room of what doesn't.
     */
    private static Set<String> chosen(List<Unsettled> open, List<Unsettled> taken, int room) {
        Set<String> paths = new LinkedHashSet<>();
        Optional<Verdict> left = Optional.empty();
        for (Unsettled unsettled : open) {
            Set<String> more = new LinkedHashSet<>(paths);
            unsettled.toMeasure().forEach(doubt -> more.add(doubt.layer().label()));
            Verdict verdict = unsettled.finding().verdict();
            boolean worseLeft = left.filter(other -> other != verdict).isPresent();
            if (more.size() <= room && taken.size() < MOST_FINDINGS && !worseLeft) {
                paths = more;
                taken.add(unsettled);
            } else if (taken.isEmpty()) {
                unsettled.toMeasure().stream()
                        .limit(room)
                        .map(doubt -> doubt.layer().label())
                        .forEach(paths::add);
                taken.add(unsettled);
            } else {
                left = left.or(() -> Optional.of(verdict));
            }
        }
        return paths;
    }

    private static List<TapeRow> rows(House house, List<Unsettled> taken, List<String> paths) {
        var words = new TapeWords(house);
        var finder = new TapeFinder(house);
        Map<String, List<TapeRow.Decides>> decides = new LinkedHashMap<>();
        Map<String, Layer> layers = new LinkedHashMap<>();
        for (Unsettled unsettled : taken) {
            for (Unsettled.Doubt doubt : unsettled.toMeasure()) {
                String path = doubt.layer().label();
                if (paths.contains(path)) {
                    layers.putIfAbsent(path, doubt.layer());
                    decides.computeIfAbsent(path, none -> new ArrayList<>())
                            .add(new TapeRow.Decides(
                                    unsettled.finding(), doubt.takesMm(), unsettled.needed(doubt, paths)));
                }
            }
        }
        List<TapeRow> rows = new ArrayList<>();
        layers.forEach((path, layer) -> rows.add(new TapeRow(
                0,
                0,
                layer,
                words.of(path),
                Trust.of(layer),
                PresumedTolerance.mm(layer),
                decides.get(path),
                finder.find(path, decides.get(path).get(0).finding()))));
        return rows;
    }

    private static List<TapeRow> ranked(List<TapeRow> rows) {
        List<TapeRow> sorted = rows.stream().sorted(FIRST_TO_MEASURE).toList();
        List<TapeRow> ranked = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            ranked.add(sorted.get(i).ranked(i + 1));
        }
        return ranked;
    }
}
