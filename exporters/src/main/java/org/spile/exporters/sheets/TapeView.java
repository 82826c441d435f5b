package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.whole.Tape;
import org.spile.analysis.whole.TapeRow;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.layout.Balloon;
import org.spile.exporters.drawing.layout.ViewDraft;
import org.spile.geometry.house.House;
import org.spile.geometry.house.PartKind;

/** One picture of a tape-measure sheet: a section, cut short to where the tapes end, each with its number. */
final class TapeView {
    /** How much is shown round the tapes (mm). */
    private static final double ROUND_MM = 110;
    /** A longer tape is shown at its far end only (mm). */
    private static final double WHOLE_MM = 400;
    /** Tapes nearer to each other than this lie side by side (mm). */
    private static final double APART_MM = 60;

    private final TapePlaces.Place place;
    private final SectionView section;
    private final List<Laid> laid = new ArrayList<>();

    TapeView(House house, TapePlaces.Place place) {
        this.place = place;
        this.section = new SectionView(house.scene(place.stance()), place.plane(), "A");
    }

    /**
     * A tape laid flat.
     *
     * @param from and to its ends in the view
     */
    private record Laid(Vector2D from, Vector2D to) {
        boolean upright() {
            return Math.abs(to.getY() - from.getY()) >= Math.abs(to.getX() - from.getX());
        }

        Laid shifted(double mm) {
            Vector2D by = upright() ? Vector2D.of(mm, 0) : Vector2D.of(0, mm);
            return new Laid(from.add(by), to.add(by));
        }

        /** Whether both would be drawn on one line. */
        boolean covers(Laid other) {
            if (upright() != other.upright()) {
                return false;
            }
            double aside = upright() ? to.getX() - other.to.getX() : to.getY() - other.to.getY();
            return Math.abs(aside) < APART_MM - 1 && Math.min(high(), other.high()) - Math.max(low(), other.low()) > 1;
        }

        private double low() {
            return upright() ? Math.min(from.getY(), to.getY()) : Math.min(from.getX(), to.getX());
        }

        private double high() {
            return upright() ? Math.max(from.getY(), to.getY()) : Math.max(from.getX(), to.getX());
        }
    }

    /** The view, its scale still open. */
    ViewDraft draft() {
        ViewDraft draft = ViewDraft.named("tape-" + place.rows().get(0).number(), numbers())
                .cutAt(place.plane().briefly())
                .scaled(Scale.oneTo(5), Scale.oneTo(50))
                .withoutScaleBar();
        for (TapeRow row : place.rows()) {
            laid.add(apart(flat(row.tape().orElseThrow())));
        }
        Extent window = window();
        Canvas canvas = Canvas.within(draft, window);
        section.draw(canvas);
        for (int i = 0; i < laid.size(); i++) {
            balloon(draft, place.rows().get(i), laid.get(i), window);
        }
        section.names(canvas, PartKind.UNIT, PartKind.DUCT, PartKind.FIXTURE, PartKind.MOVER);
        return draft;
    }

    /** The rows it shows, as {@code 1 to 4, 7}. */
    private String numbers() {
        List<String> runs = new ArrayList<>();
        List<TapeRow> rows = place.rows();
        for (int i = 0; i < rows.size(); ) {
            int first = i;
            while (i + 1 < rows.size()
                    && rows.get(i + 1).number() == rows.get(i).number() + 1) {
                i++;
            }
            boolean several = i - first > 1;
            runs.add(rows.get(first).number() + (several ? " to " + rows.get(i).number() : ""));
            i = several ? i + 1 : first + 1;
        }
        return String.join(", ", runs);
    }

    private Laid flat(Tape tape) {
        return new Laid(place.plane().flat(tape.from()), place.plane().flat(tape.to()));
    }

    /** Beside those laid before, if it would lie on one of them. */
    private Laid apart(Laid tape) {
        Laid free = tape;
        for (int step = 1; laid.stream().anyMatch(free::covers); step++) {
            free = tape.shifted(step * APART_MM);
        }
        return free;
    }

    private Extent window() {
        List<Vector2D> ends = new ArrayList<>();
        for (Laid tape : laid) {
            ends.add(tape.to());
            if (tape.from().distance(tape.to()) <= WHOLE_MM) {
                ends.add(tape.from());
            }
        }
        return Extent.around(ends).grown(ROUND_MM);
    }

    private static void balloon(ViewDraft draft, TapeRow row, Laid tape, Extent window) {
        Vector2D from = tape.from();
        boolean cut = !window.holds(Extent.around(List.of(from)), 0);
        if (cut) {
            List<Vector2D> seen = WindowClip.segment(from, tape.to(), window);
            from = seen.isEmpty() ? tape.to() : seen.get(0);
        }
        draft.balloon(new Balloon(row.number(), from, tape.to(), cut, row.path()));
    }
}
