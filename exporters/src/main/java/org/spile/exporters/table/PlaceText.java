package org.spile.exporters.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.fit.Limit;
import org.spile.analysis.place.NoPlace;
import org.spile.analysis.place.PlaceAnswer;
import org.spile.analysis.place.PlaceMap;
import org.spile.geometry.kernel.measure.Written;
import org.spile.geometry.kernel.planar.Outline;

/** The places of a unit as text for people, 80 columns wide. */
public final class PlaceText {
    private static final double MM2_PER_M2 = 1e6;

    /** Below this three decimals would hide that there is a place. */
    private static final double SMALL_MM2 = 10_000;

    private static final String INDENT = "  ";
    private static final String MORE = "    ";

    private final Ink ink;

    private PlaceText(Ink ink) {
        this.ink = ink;
    }

    /** A writer with this ink. */
    public static PlaceText in(Ink ink) {
        return new PlaceText(ink);
    }

    /**
     * Writes an answer.
     *
     * @throws IOException if {@code out} does
     */
    public void write(PlaceAnswer answer, Appendable out) throws IOException {
        out.append(ink.strong("places of " + answer.title() + " in " + answer.in()))
                .append('\n');
        out.append(Paragraph.of(
                INDENT,
                INDENT,
                "where the middle of its box may be, in mm in the frame of " + answer.trailer()
                        + ": x forward, y to the left, z up. They hold in "
                        + String.join(", ", answer.stances())
                        + ". What is tight there fits; borders fit."));
        if (!answer.leftOut().isEmpty()) {
            out.append(Paragraph.of(
                    INDENT,
                    INDENT,
                    "Left out, as they go with it and would have to be made anew: "
                            + answer.leftOut().stream()
                                    .map(path -> path.substring(path.indexOf('.') + 1))
                                    .collect(Collectors.joining(", "))
                            + "."));
        }
        if (answer.notKnown().isPresent()) {
            out.append('\n')
                    .append(Paragraph.of(
                            "", INDENT, "not known: " + answer.notKnown().get() + "."));
            return;
        }
        out.append('\n').append(Paragraph.of("", INDENT, now(answer)));
        out.append('\n').append(maps(answer));
        if (answer.empty().isPresent()) {
            none(answer.empty().get(), out);
        }
        growth(answer, out);
        out.append('\n').append(verdict(answer)).append('\n');
    }

    private static String now(PlaceAnswer answer) {
        return "now at x " + mm(answer.now().getX()) + ", y " + mm(answer.now().getY()) + ", z "
                + mm(answer.now().getZ()) + ", turned " + mm(answer.nowYawDeg()) + " deg: "
                + (answer.fitsNow() ? "one of the places." : "none of the places.");
    }

    private static String maps(PlaceAnswer answer) {
        var table = new Columns("turned", "area m2", "x from..to", "y from..to", "roomiest x, y, z", "room");
        for (var map : answer.maps()) {
            var free = map.free();
            var turned = mm(map.yawDeg()) + " deg";
            if (free.isEmpty()) {
                table.row(turned, "none", "", "", "", "");
            }
            for (var area : free.areas()) {
                table.row(
                        turned,
                        m2(area.areaMm2()),
                        mm(area.minX()) + ".." + mm(area.maxX()),
                        mm(area.minY()) + ".." + mm(area.maxY()),
                        isFirst(map, area) ? best(map) : "",
                        isFirst(map, area) ? mm(map.roomMm()) : "");
            }
            for (var line : free.lines()) {
                var first = line.get(0);
                var last = line.get(line.size() - 1);
                table.row(
                        turned,
                        "exactly",
                        mm(first.getX()) + ".." + mm(last.getX()),
                        mm(first.getY()) + ".." + mm(last.getY()),
                        free.areas().isEmpty() ? best(map) : "",
                        free.areas().isEmpty() ? "0" : "");
            }
            for (var point : free.points()) {
                table.row(turned, "exactly", mm(point.getX()), mm(point.getY()), "", "0");
            }
        }
        return table.lines(INDENT);
    }

    /** The piece that holds the roomiest place. */
    private static boolean isFirst(PlaceMap map, Outline area) {
        var at = map.best().orElseThrow();
        return area.contains(Vector2D.of(at.getX(), at.getY()));
    }

    private static String best(PlaceMap map) {
        var at = map.best().orElseThrow();
        return mm(at.getX()) + ", " + mm(at.getY()) + ", " + mm(at.getZ());
    }

    private void none(NoPlace none, Appendable out) throws IOException {
        if (none.tooLargeMm() > 0) {
            out.append('\n')
                    .append(Paragraph.of(
                            "",
                            INDENT,
                            "However it is turned, it is " + mm(none.tooLargeMm()) + " mm larger than what it is in."));
        }
        if (!none.limits().isEmpty()) {
            out.append('\n').append(Paragraph.of("", INDENT, together(none)));
            out.append('\n').append(limits(none));
        }
        var giving = none.things().stream()
                .filter(thing -> thing.yieldMm().isPresent())
                .toList();
        if (!giving.isEmpty()) {
            out.append("\nwhat stands in the way, and how far it alone would have to give way\n");
            var table = new Columns("", "mm");
            giving.forEach(thing -> table.row(thing.title(), mm(thing.yieldMm().getAsDouble())));
            out.append(table.lines(INDENT));
        }
        if (!none.levers().isEmpty()) {
            out.append("\nwhat each of these changes alone would open\n");
        }
        for (var lever : none.levers()) {
            out.append(Paragraph.of(INDENT, MORE, lever(lever)));
            for (var but : lever.but()) {
                out.append(Paragraph.of(MORE, MORE, "but then: " + but));
            }
        }
    }

    private static String together(NoPlace none) {
        var governing = none.governing();
        var words = new StringBuilder(
                none.onlyTogether()
                        ? "Each limit alone leaves room; all together they leave none. "
                        : "Some limits leave no room even alone. ");
        if (governing.isPresent()) {
            var asked = governing.get();
            words.append("Governing: ")
                    .append(asked.limit().says())
                    .append("; it alone would have to yield ")
                    .append(mm(asked.yieldMm().getAsDouble()))
                    .append(" mm.");
        } else if (none.pairs().isEmpty()) {
            words.append("No limit opens a place by yielding alone, nor do any two.");
        } else {
            words.append("No limit opens a place by yielding alone; these two together would: ")
                    .append(none.pairs().stream()
                            .map(pair -> pair.stream().map(Limit::says).collect(Collectors.joining(" and ")))
                            .collect(Collectors.joining("; or ")))
                    .append('.');
        }
        return words.toString();
    }

    private static String limits(NoPlace none) {
        var table = new Columns("limit", "alone leaves m2", "yields mm");
        for (var asked : none.limits()) {
            table.row(
                    asked.limit().says(),
                    m2(asked.aloneMm2()),
                    asked.yieldMm().isPresent() ? mm(asked.yieldMm().getAsDouble()) : "-");
        }
        return table.lines(INDENT);
    }

    private static String lever(NoPlace.Lever lever) {
        if (lever.set().isEmpty()) {
            return lever.path() + ": none from " + mm(lever.nowMm()) + " to " + mm(lever.emptyToMm()) + ".";
        }
        return "--set " + ShellWord.quoted(lever.set().get()) + " opens " + m2(lever.areaMm2()) + " m2; short of "
                + Written.number(lever.emptyToMm(), 2) + " there is surely none.";
    }

    private static void growth(PlaceAnswer answer, Appendable out) throws IOException {
        if (answer.growth().isEmpty() || answer.growth().get().rows().isEmpty()) {
            return;
        }
        var growth = answer.growth().get();
        out.append('\n')
                .append(Paragraph.of("", INDENT, "area in m2 as the ceiling goes down (" + growth.path() + ")"));
        var heads = new ArrayList<>(List.of("drop"));
        answer.maps().forEach(map -> heads.add(mm(map.yawDeg()) + " deg"));
        var table = new Columns(heads.toArray(String[]::new));
        for (var row : growth.rows()) {
            var cells = new ArrayList<>(List.of(mm(row.dropMm())));
            row.areasMm2().forEach(area -> cells.add(m2(area)));
            table.row(cells.toArray(String[]::new));
        }
        out.append(table.lines(INDENT));
    }

    private String verdict(PlaceAnswer answer) {
        long open = answer.maps().stream().filter(map -> !map.free().isEmpty()).count();
        return ink.strong(
                open == 0
                        ? "no place"
                        : "a place at " + open + " of " + answer.maps().size() + " ways to turn it");
    }

    private static String mm(double mm) {
        return Written.number(mm, 1);
    }

    private static String m2(double mm2) {
        return Written.number(mm2 / MM2_PER_M2, mm2 < SMALL_MM2 ? 6 : 3);
    }
}
