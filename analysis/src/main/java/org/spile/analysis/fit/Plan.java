package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Prism;
import org.spile.geometry.kernel.solid.Solid;

/**
 * Things seen from above.
 *
 * <p>Prisms show their own outline; what is round or tilted shows the box round it, which is never less than the thing.
 */
final class Plan {
    private static final double FAR_MM = 30_000;

    private Plan() {}

    /** What a body covers, as outlines that may overlap. */
    static List<Outline> of(Body body) {
        List<Outline> covered = new ArrayList<>();
        for (Solid solid : body.solids()) {
            covered.add(outline(solid));
        }
        return covered;
    }

    /** The part of an outline that is covered: the largest piece, if there is one. */
    static Optional<Outline> within(Outline place, List<Outline> covered) {
        return Regions.intersection(List.of(place), covered).stream().max(Comparator.comparingDouble(Outline::areaMm2));
    }

    /** The flat box round an outline, at height 0. */
    static Box3 bounds(Outline outline) {
        return new Box3(outline.minX(), outline.minY(), 0, outline.maxX(), outline.maxY(), 0);
    }

    private static Outline outline(Solid solid) {
        if (solid instanceof Prism prism && prism.roundMm() == 0) {
            Optional<Outline> sharp = prism.footprint().outline();
            if (sharp.isPresent()) {
                return sharp.get();
            }
        }
        Box3 box = solid.bounds();
        return Outline.of(List.of(
                Vector2D.of(box.minX(), box.minY()),
                Vector2D.of(box.maxX(), box.minY()),
                Vector2D.of(box.maxX(), box.maxY()),
                Vector2D.of(box.minX(), box.maxY())));
    }

    /** Outlines as a thin sheet at height 0, to be held against {@link #tall} ones. */
    static Body flat(List<Outline> outlines) {
        return upright(outlines, -1, 1);
    }

    /** Outlines from far below to far above. */
    static Body tall(List<Outline> outlines) {
        return upright(outlines, -FAR_MM, FAR_MM);
    }

    static Body upright(List<Outline> outlines, double lowMm, double highMm) {
        return new Body(outlines.stream()
                .map(outline -> (Solid) Prism.of(outline, lowMm, highMm))
                .toList());
    }

    /** Everything round an outline, as far as matters, and what its holes leave out. */
    static List<Outline> around(Outline outline) {
        Outline far = Outline.rectangle(
                outline.minX() - FAR_MM, outline.minY() - FAR_MM, outline.maxX() + FAR_MM, outline.maxY() + FAR_MM);
        return Regions.difference(List.of(far), List.of(outline));
    }
}
