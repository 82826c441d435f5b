package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.Finding;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Scene.TrailerPlace;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Move;

/**
 * Where to cut: as few planes as show every flagged gap at its true size, and one through each unit that none of them
 * meets.
 *
 * <p>A gap between two faces is as wide anywhere along them, so a finding leaves a range of places; ranges that have a
 * place in common share a plane (the fewest points that meet all intervals: take them by their ends).
 */
final class SectionPlaces {
    /** Beyond this much of the gap lying along the trailer, a plane across it would not show its size. */
    private static final double MOSTLY_ALONG = 1e-6;

    private final Scene scene;
    private final List<Wanted> wanted = new ArrayList<>();

    /**
     * A plane and the findings it shows.
     *
     * @param plane where to cut
     * @param findings those whose gap it shows
     */
    record Place(SectionPlane plane, List<Finding> findings) {
        Place {
            findings = List.copyOf(findings);
        }
    }

    private record Wanted(TrailerPlace trailer, boolean across, double from, double to, Optional<Finding> finding) {}

    private SectionPlaces(Scene scene) {
        this.scene = scene;
    }

    /** The planes through a scene that show these findings. */
    static List<Place> of(Scene scene, List<Finding> findings) {
        var places = new SectionPlaces(scene);
        findings.forEach(places::want);
        List<Place> found = places.fewest();
        return places.withUnits(found);
    }

    private void want(Finding finding) {
        Vector3D at = finding.at().orElseThrow();
        Vector3D to = finding.to().orElseThrow();
        Optional<Part> subject = Subjects.partAt(scene, finding.subject(), at);
        Optional<TrailerPlace> trailer = subject.flatMap(part -> trailer(part.trailer()));
        if (trailer.isEmpty() || at.distance(to) < 1e-9) {
            return;
        }
        Move home = trailer.get().toSite().inverse();
        Vector3D gap = home.applyDirection(to.subtract(at)).normalize();
        boolean across = Math.abs(gap.getX()) <= MOSTLY_ALONG;
        if (!across && Math.abs(gap.getY()) > MOSTLY_ALONG) {
            return;
        }
        double here = coordinate(home.apply(at), across);
        double[] range = {here, here};
        Optional<Part> against = finding.against().flatMap(path -> Subjects.partAt(scene, path, to));
        if (against.isPresent()) {
            range = common(home, subject.get(), against.get(), across, here);
        }
        wanted.add(new Wanted(trailer.get(), across, range[0], range[1], Optional.of(finding)));
    }

    /** The places along which both parts reach, drawn in a little so that a cut isn't along a face. */
    private static double[] common(Move home, Part one, Part other, boolean across, double here) {
        if (Subjects.changes(one, other, across)) {
            return new double[] {here, here};
        }
        Box3 a = one.body().moved(home).bounds();
        Box3 b = other.body().moved(home).bounds();
        double from = across ? Math.max(a.minX(), b.minX()) : Math.max(a.minY(), b.minY());
        double to = across ? Math.min(a.maxX(), b.maxX()) : Math.min(a.maxY(), b.maxY());
        return to - from > 4 ? new double[] {from + 1, to - 1} : new double[] {here, here};
    }

    private List<Place> fewest() {
        List<Wanted> left = new ArrayList<>(wanted);
        left.sort(Comparator.comparing((Wanted each) -> each.trailer().id())
                .thenComparing(Wanted::across)
                .thenComparingDouble(Wanted::to));
        List<Place> places = new ArrayList<>();
        while (!left.isEmpty()) {
            Wanted first = left.get(0);
            List<Wanted> met = left.stream()
                    .filter(each -> each.trailer().equals(first.trailer()) && each.across() == first.across())
                    .filter(each -> each.from() <= first.to() && each.to() >= first.to())
                    .toList();
            double from = met.stream().mapToDouble(Wanted::from).max().orElseThrow();
            double to = met.stream().mapToDouble(Wanted::to).min().orElseThrow();
            places.add(new Place(
                    new SectionPlane(first.trailer(), first.across(), rounded(from, to)),
                    met.stream().flatMap(each -> each.finding().stream()).toList()));
            left.removeAll(met);
        }
        return places;
    }

    private List<Place> withUnits(List<Place> found) {
        List<Place> places = new ArrayList<>(found);
        for (Part part : scene.parts()) {
            if (part.kind() != PartKind.UNIT || part.spaces().isEmpty()) {
                continue;
            }
            TrailerPlace trailer = trailer(part.trailer()).orElseThrow();
            Box3 box = part.body().moved(trailer.toSite().inverse()).bounds();
            boolean met = places.stream()
                    .map(Place::plane)
                    .filter(SectionPlane::across)
                    .filter(plane -> plane.trailer().equals(trailer))
                    .anyMatch(plane -> plane.offsetMm() > box.minX() && plane.offsetMm() < box.maxX());
            if (!met) {
                places.add(new Place(
                        new SectionPlane(trailer, true, rounded(box.minX() + 1, box.maxX() - 1)), List.of()));
            }
        }
        return places;
    }

    /** The middle of a range, on a whole ten or a whole millimetre if there is one inside. */
    private static double rounded(double from, double to) {
        double middle = (from + to) / 2;
        for (double step : new double[] {10, 1}) {
            double round = Math.rint(middle / step) * step;
            if (round >= from && round <= to) {
                return round + 0.0;
            }
        }
        return middle;
    }

    private Optional<TrailerPlace> trailer(String id) {
        return scene.trailers().stream().filter(each -> each.id().equals(id)).findFirst();
    }

    private static double coordinate(Vector3D point, boolean across) {
        return across ? point.getX() : point.getY();
    }
}
