package org.spile.analysis.whole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.Finding;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.RoomSpace;
import org.spile.geometry.house.Scene;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Move;

/** The order in which somebody walks a house with a tape: trailer by trailer, rear to front, floor to ceiling. */
final class WalkingOrder {
    private final House house;

    WalkingOrder(House house) {
        this.house = house;
    }

    /**
     * A place to stand.
     *
     * @param trailer which trailer, in the house's order
     * @param rearMm how far forward of the trailer's rear edge it begins
     * @param heightMm rooms before the cavities over them
     * @param title what to call it
     */
    private record Place(int trailer, double rearMm, double heightMm, String title) implements Comparable<Place> {
        private static final Comparator<Place> ORDER = Comparator.comparingInt(Place::trailer)
                .thenComparingDouble(Place::rearMm)
                .thenComparingDouble(Place::heightMm)
                .thenComparing(Place::title);

        @Override
        public int compareTo(Place other) {
            return ORDER.compare(this, other);
        }
    }

    /** The rows by the places where they are measured, numbered in that order. */
    List<TapeSheet.Stop> stops(List<TapeRow> rows) {
        Map<Place, List<TapeRow>> byPlace = new TreeMap<>();
        for (TapeRow row : rows) {
            byPlace.computeIfAbsent(place(row), none -> new ArrayList<>()).add(row);
        }
        List<TapeSheet.Stop> stops = new ArrayList<>();
        int number = 1;
        for (var entry : byPlace.entrySet()) {
            List<TapeRow> here = new ArrayList<>(entry.getValue());
            here.sort(Comparator.comparingDouble(WalkingOrder::height)
                    .thenComparingDouble(this::forward)
                    .thenComparing(TapeRow::path));
            List<TapeRow> numbered = new ArrayList<>();
            for (TapeRow row : here) {
                numbered.add(row.numbered(number++));
            }
            stops.add(new TapeSheet.Stop(entry.getKey().title(), numbered));
        }
        return stops;
    }

    /** Where one stands to measure it: where the tightest finding that it decides is. */
    private Place place(TapeRow row) {
        Finding finding = row.decides().get(0).finding();
        Scene scene = scene(finding);
        String space = subject(scene, finding)
                .flatMap(part -> part.spaces().stream().findFirst())
                .orElseGet(() -> last(finding.subject()));
        for (CavitySpace cavity : scene.cavities()) {
            if (cavity.id().equals(space)) {
                return place(scene, cavity.trailer(), cavity.title(), rear(scene, cavity), 1);
            }
        }
        for (RoomSpace room : scene.rooms()) {
            if (room.id().equals(space)) {
                Move home = Landmark.home(scene, room.trailer());
                double rear = room.outline().shell().stream()
                        .mapToDouble(corner -> home.apply(Vector3D.of(corner.getX(), corner.getY(), 0))
                                .getX())
                        .min()
                        .orElse(0);
                return place(scene, room.trailer(), room.title(), rear, 0);
            }
        }
        String trailer =
                row.tape().map(Tape::trailer).orElse(scene.trailers().get(0).id());
        return place(scene, trailer, "outside and shell", Double.NEGATIVE_INFINITY, 0);
    }

    private static double rear(Scene scene, CavitySpace cavity) {
        Move home = Landmark.home(scene, cavity.trailer());
        return cavity.outline().shell().stream()
                .mapToDouble(corner ->
                        home.apply(Vector3D.of(corner.getX(), corner.getY(), 0)).getX())
                .min()
                .orElse(0);
    }

    private static Place place(Scene scene, String trailer, String title, double rearMm, double heightMm) {
        List<String> trailers =
                scene.trailers().stream().map(Scene.TrailerPlace::id).toList();
        String in = trailer.equals(House.ASSUMED_TRAILER) ? "" : ", in " + trailer;
        return new Place(trailers.indexOf(trailer), rearMm, heightMm, title + in);
    }

    private static Optional<Part> subject(Scene scene, Finding finding) {
        return scene.parts().stream()
                .filter(part -> part.id().equals(finding.subject())
                        || part.thing().equals(finding.subject())
                        || finding.subject().startsWith(part.thing() + "."))
                .filter(part -> !part.spaces().isEmpty())
                .min(Comparator.comparingDouble(part -> away(part, finding)));
    }

    private static double away(Part part, Finding finding) {
        return finding.at()
                .map(at -> part.body()
                        .bounds()
                        .gapTo(new Box3(at.getX(), at.getY(), at.getZ(), at.getX(), at.getY(), at.getZ())))
                .orElse(0.0);
    }

    private Scene scene(Finding finding) {
        return house.scene(
                finding.stance().stream().findFirst().orElse(house.stances().get(0)));
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    private static double height(TapeRow row) {
        return row.tape()
                .map(tape -> Math.min(tape.from().getZ(), tape.to().getZ()))
                .orElse(0.0);
    }

    private double forward(TapeRow row) {
        return row.tape()
                .map(tape -> Landmark.home(house.scene(tape.stance()), tape.trailer())
                        .apply(tape.to())
                        .getX())
                .orElse(0.0);
    }
}
