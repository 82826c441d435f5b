package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.whole.Tape;
import org.spile.analysis.whole.TapeRow;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Scene.TrailerPlace;
import org.spile.geometry.kernel.solid.Box3;

/** Where to cut so that every tape lies in a picture: as few planes as meet all that is measured. */
final class TapePlaces {
    /** How far off a flat thing, as the mouth of a spigot, a cut still shows where it lies (mm). */
    private static final double FLAT_SHOWS_MM = 150;

    private TapePlaces() {}

    /**
     * A picture.
     *
     * @param stance which stance it shows
     * @param plane where it is cut
     * @param rows whose tapes lie in it
     */
    record Place(String stance, SectionPlane plane, List<TapeRow> rows) {
        Place {
            rows = List.copyOf(rows);
        }
    }

    private record Wanted(TapeRow row, String stance, TrailerPlace trailer, boolean across, double from, double to) {
        boolean besides(Wanted other) {
            return stance.equals(other.stance) && trailer.id().equals(other.trailer.id()) && across == other.across;
        }
    }

    /** The pictures of a house that show these rows; rows without a tape are in none. */
    static List<Place> of(House house, List<TapeRow> rows) {
        List<Wanted> left = new ArrayList<>();
        for (TapeRow row : rows) {
            row.tape().ifPresent(tape -> left.add(wanted(house, row, tape)));
        }
        left.sort(Comparator.comparing(Wanted::stance)
                .thenComparing(each -> each.trailer().id())
                .thenComparing(each -> !each.across())
                .thenComparingDouble(Wanted::to));
        List<Place> places = new ArrayList<>();
        while (!left.isEmpty()) {
            Wanted first = left.get(0);
            List<Wanted> met = left.stream()
                    .filter(first::besides)
                    .filter(each -> each.from() <= first.to() && each.to() >= first.to())
                    .toList();
            double from = met.stream().mapToDouble(Wanted::from).max().orElseThrow();
            double to = met.stream().mapToDouble(Wanted::to).min().orElseThrow();
            var plane = new SectionPlane(first.trailer(), first.across(), Math.rint((from + to) / 2));
            places.add(new Place(
                    first.stance(),
                    plane,
                    met.stream()
                            .map(Wanted::row)
                            .sorted(Comparator.comparingInt(TapeRow::number))
                            .toList()));
            left.removeAll(met);
        }
        places.sort(Comparator.comparingInt(place -> place.rows().get(0).number()));
        return places;
    }

    /** A tape fore and aft shows in a plane lengthwise, any other in one across. */
    private static Wanted wanted(House house, TapeRow row, Tape tape) {
        TrailerPlace trailer = house.scene(tape.stance()).trailers().stream()
                .filter(each -> each.id().equals(tape.trailer()))
                .findFirst()
                .orElseThrow();
        Vector3D way = trailer.toSite().inverse().applyDirection(tape.to().subtract(tape.from()));
        boolean across = Math.abs(way.getX()) <= Math.abs(way.getY()) + Math.abs(way.getZ());
        Box3 box = tape.about();
        double from = across ? box.minX() : box.minY();
        double to = across ? box.maxX() : box.maxY();
        // Drawn in a little, so that a cut isn't along a face; what is flat shows from a little way off.
        double in = to - from > 4 ? 1 : -FLAT_SHOWS_MM;
        return new Wanted(row, tape.stance(), trailer, across, from + in, to - in);
    }
}
