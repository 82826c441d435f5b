package org.spile.exporters.sheets;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.finding.Verdict;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Fill;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Line;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Polyline;

/** What came of a point, as a sign that is told from the others by its shape alone. */
enum StudySign {
    /** A full square. */
    PASSES("passes"),
    /** A square half full. */
    TIGHT("tight"),
    /** A cross. */
    FAILS("fails"),
    /** An empty square. */
    NOT_KNOWN("not known"),
    /** A dash. */
    NO_HOUSE("no such house");

    private static final double HALF_MM = 1.8;

    private final String words;

    StudySign(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** The sign of a verdict; nothing demanded counts as passed. */
    static StudySign of(Optional<Verdict> verdict) {
        return verdict.map(StudySign::of).orElse(PASSES);
    }

    private static StudySign of(Verdict verdict) {
        return switch (verdict) {
            case PASSES -> PASSES;
            case TIGHT -> TIGHT;
            case FAILS -> FAILS;
            case NOT_KNOWN -> NOT_KNOWN;
        };
    }

    /** The sign in its place (paper mm). */
    List<Mark> at(Vector2D middle) {
        Pen pen = Layer.NOTES.pen().wide(Pen.WIDE_MM);
        Extent box = Extent.around(List.of(middle)).grown(HALF_MM);
        List<Vector2D> corners = box.corners();
        Polyline square = Polyline.rectangle(pen, box);
        return switch (this) {
            case PASSES -> List.of(new Fill(pen, corners), square);
            case TIGHT -> List.of(new Fill(pen, corners.subList(0, 3)), square);
            case FAILS ->
                List.of(new Line(pen, corners.get(0), corners.get(2)), new Line(pen, corners.get(1), corners.get(3)));
            case NOT_KNOWN -> List.of(square);
            case NO_HOUSE ->
                List.of(new Line(pen, middle.subtract(Vector2D.of(HALF_MM, 0)), middle.add(Vector2D.of(HALF_MM, 0))));
        };
    }
}
