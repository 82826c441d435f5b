package org.spile.exporters.dxf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Hatch;
import org.spile.exporters.drawing.HatchFamily;
import org.spile.exporters.drawing.HatchLines;
import org.spile.exporters.drawing.Patch;
import org.spile.exporters.drawing.Polyline;
import org.spile.exporters.drawing.Vertex;

/**
 * A hatched area, after its entity's head. The order of groups is strict, and the pattern's own lines are written out: a
 * pattern's name alone is not enough.
 */
final class HatchTags {
    private static final int POLYLINE_PATH = 2;
    private static final int EXTERNAL = 1;
    private static final int OUTERMOST = 16;

    private final TagWriter tags;
    private final Space space;
    private final Hatch hatch;
    private final List<Patch> texts;

    HatchTags(TagWriter tags, Space space, Hatch hatch, List<Patch> texts) {
        this.tags = tags;
        this.space = space;
        this.hatch = hatch;
        this.texts = texts;
    }

    void write() throws IOException {
        var solid = hatch.solid(space.unit());
        var paths =
                new ArrayList<>(hatch.loops().stream().map(Polyline::vertices).toList());
        if (!solid) {
            HatchLines.holes(hatch, space.unit(), texts).forEach(hole -> paths.add(Vertex.straight(hole)));
        }
        tags.put(100, "AcDbHatch")
                .point(10, Vector2D.ZERO)
                .point(210, Vector2D.ZERO, 1)
                .put(2, solid ? "SOLID" : hatch.material().words().toUpperCase(Locale.ROOT))
                .put(70, solid ? 1 : 0)
                .put(71, 0)
                .put(91, paths.size());
        for (var i = 0; i < paths.size(); i++) {
            path(paths.get(i), i == 0 ? EXTERNAL + POLYLINE_PATH : OUTERMOST + POLYLINE_PATH);
        }
        tags.put(75, 0).put(76, 1);
        if (!solid) {
            pattern(hatch.material().families());
        }
        tags.put(98, 0);
    }

    private void path(List<Vertex> vertices, int flags) throws IOException {
        var bent = vertices.stream().anyMatch(vertex -> vertex.bulge() != 0);
        tags.put(92, flags).put(72, bent ? 1 : 0).put(73, 1).put(93, vertices.size());
        for (var vertex : vertices) {
            tags.flat(10, space.at(vertex.at()));
            if (bent) {
                tags.put(42, vertex.bulge());
            }
        }
        tags.put(97, 0);
    }

    private void pattern(List<HatchFamily> families) throws IOException {
        tags.put(52, 0).put(41, space.unit()).put(77, 0).put(78, families.size());
        for (var family : families) {
            var degrees = family.angleDeg() + hatch.turnDeg();
            var angle = Math.toRadians(degrees);
            var along = Vector2D.of(StrictMath.cos(angle), StrictMath.sin(angle));
            var across = Vector2D.of(-along.getY(), along.getX());
            var base = space.at(across.multiply(family.startMm() * space.unit()));
            var step = across.multiply(family.spacingMm()).add(along.multiply(family.shiftMm()));
            tags.put(53, degrees).put(43, base.getX()).put(44, base.getY());
            tags.put(45, step.getX() * space.unit()).put(46, step.getY() * space.unit());
            tags.put(79, family.dashesMm().size());
            for (var i = 0; i < family.dashesMm().size(); i++) {
                // Gaps are negative lengths.
                tags.put(49, family.dashesMm().get(i) * space.unit() * (i % 2 == 0 ? 1 : -1));
            }
        }
    }
}
