package org.spile.geometry.file;

import java.util.List;
import org.spile.geometry.house.told.ToldDock;
import org.spile.geometry.kernel.measure.Kind;
import org.spile.geometry.kernel.measure.Reading;

/** How a trailer stands when docked. */
final class DockShape {
    private static final Key<String> FACE = Key.of("face", new WordForm(Faces.SIDES), "F", "its own face at the joint")
            .needed();
    private static final Key<TrailerFace> TO = Key.of(
                    "to", new TrailerFaceForm(), "F", "the other trailer and its face")
            .needed();
    private static final Key<Reading> APART = Key.of("apart", Quantity.distance(), "F", "the gap between the two faces")
            .unsaid("0");
    private static final Key<Reading> ASIDE = Key.of(
                    "aside",
                    Quantity.signed(),
                    "F",
                    "its shift along the joint, to the left of one who looks out of the other's face")
            .unsaid("0");
    private static final Key<Reading> LEVEL = Key.of("level", Quantity.signed(), "F", "its deck above the other's")
            .unsaid("0");
    private static final Key<Reading> TURN = Key.of(
                    "turn", Quantity.of(Kind.ANGLE), "F", "out of parallel, nose to the left")
            .unsaid("0 deg");

    static final Shape<ToldDock> SHAPE = Shape.of(
            "dock",
            "a dock",
            "How a trailer stands when docked to another.",
            List.of(FACE, TO, APART, ASIDE, LEVEL, TURN),
            DockShape::make);

    private DockShape() {}

    private static ToldDock make(Values values) {
        TrailerFace to = values.need(TO);
        return new ToldDock(
                values.path(),
                values.need(FACE),
                to.trailer(),
                to.face(),
                values.or(APART, Kind.LENGTH, 0),
                values.or(ASIDE, Kind.LENGTH, 0),
                values.or(LEVEL, Kind.LENGTH, 0),
                values.or(TURN, Kind.ANGLE, 0));
    }
}
