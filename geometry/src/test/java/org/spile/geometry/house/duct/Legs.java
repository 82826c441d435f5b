package org.spile.geometry.house.duct;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Prism;

/** Legs without a house round them. */
final class Legs {
    static final Section RECTANGLE = new Section.Rectangular(300, 80);
    static final Section SQUARE = new Section.Rectangular(150, 150);
    static final Section ROUND = new Section.Round(125);
    static final Section OVAL = new Section.FlatOval(260, 90);
    static final Section TALL_OVAL = new Section.FlatOval(70, 180);
    static final List<Section> SECTIONS = List.of(RECTANGLE, SQUARE, ROUND, OVAL, TALL_OVAL);

    private Legs() {}

    static DuctLeg leg(Vector3D from, Vector3D to, Vector3D axis, Section start, Section end) {
        return leg(from, to, axis, start, end, "", Optional.empty(), Vanes.NONE);
    }

    static DuctLeg leg(
            Vector3D from,
            Vector3D to,
            Vector3D axis,
            Section start,
            Section end,
            String flush,
            Optional<Double> bend,
            Vanes vanes) {
        return new DuctLeg(
                "runs.flat.path[1]",
                "hut",
                axis,
                from,
                to,
                start,
                end,
                1,
                flush,
                List.of(),
                "",
                bend,
                vanes,
                Sides.of(start),
                Sides.of(end));
    }

    static List<DuctPiece> pieces(Screws screws, DuctLeg... legs) {
        Body body = Body.of(Prism.box(0, 0, 0, 1, 1, 1));
        LegBodies bodies = new LegBodies(Optional.of(body), Optional.of(body), Optional.of(body));
        List<LegBodies> each = Collections.nCopies(legs.length, bodies);
        return DuctPieces.of(List.of(legs), each, screws, Optional.empty(), Optional.empty());
    }

    /** The only piece of a leg by itself along x, moved aside by its end. */
    static DuctPiece alone(Section start, Section end, double lengthMm, double leftMm, double upMm) {
        Vector3D to = Vector3D.of(lengthMm, leftMm, upMm);
        return pieces(Screws.NONE, leg(Vector3D.ZERO, to, Vector3D.Unit.PLUS_X, start, end))
                .get(0);
    }
}
