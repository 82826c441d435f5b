package org.spile.exporters.svg;

import org.spile.exporters.drawing.Arc;
import org.spile.exporters.drawing.Bend;
import org.spile.exporters.drawing.Polyline;

/** Bent lines as SVG path data; arcs stay arcs. */
final class SvgPaths {
    private SvgPaths() {}

    static String of(Polyline polyline, SvgPlace place) {
        var vertices = polyline.vertices();
        var path = new StringBuilder("M").append(place.point(vertices.get(0).at()));
        var pieces = polyline.closed() ? vertices.size() : vertices.size() - 1;
        for (var i = 0; i < pieces; i++) {
            var to = vertices.get((i + 1) % vertices.size()).at();
            var bend = Bend.between(vertices.get(i), to);
            if (bend.isPresent()) {
                path.append(arc(bend.get(), place)).append(place.point(to));
            } else if (i + 1 < vertices.size()) {
                path.append('L').append(place.point(to));
            }
        }
        return polyline.closed() ? path.append('Z').toString() : path.toString();
    }

    static String of(Arc arc, SvgPlace place) {
        var bend = arc.bend();
        return "M" + place.point(bend.at(0)) + arc(bend, place) + place.point(bend.at(1));
    }

    /** Turning y turns the sense of rotation, and with it the sweep flag; which arc is the longer one stays. */
    private static String arc(Bend bend, SvgPlace place) {
        var radius = place.length(bend.radiusMm());
        var longer = Math.abs(bend.sweepRad()) > Math.PI ? "1" : "0";
        var sweep = bend.sweepRad() > 0 ? "0" : "1";
        return "A" + radius + " " + radius + " 0 " + longer + " " + sweep + " ";
    }
}
