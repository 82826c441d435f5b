package org.spile.geometry.house;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.clearance.Travel;
import org.spile.geometry.kernel.measure.Stack;

/** Everything that moves in a house, and the house with movers anywhere on their way. */
public interface Travels {
    /** Movers and the leaves of hinged and sliding openings, in the order of the file: leaves first. */
    List<Mover> movers();

    /** Trailers that dock to another, in the order of the file. */
    List<Approach> approaches();

    /**
     * Where a mover stands in a stance, in its unit.
     *
     * @throws IllegalArgumentException if there is no such stance or mover
     */
    double position(String stance, String mover);

    /**
     * A stance with some movers elsewhere.
     *
     * @param positions by mover, in its unit
     * @throws IllegalArgumentException if there is no such stance or mover
     */
    Scene scene(String stance, Map<String, Double> positions);

    /**
     * A mover's own motion in the site frame, counted from where it stands shut; what it rides stands where the stance or
     * {@code positions} have it.
     *
     * @param positions of other movers that are elsewhere
     * @return absent if its trailer isn't there
     * @throws IllegalArgumentException if there is no such stance or mover
     */
    Optional<Travel> motion(String stance, Map<String, Double> positions, String mover);

    /**
     * Ids of the parts that move with a mover: its own, and those of what rides it.
     *
     * @throws IllegalArgumentException if there is no such mover
     */
    List<String> carried(String mover);

    /**
     * A stance with a trailer drawn away from its dock, what comes out for the road being out.
     *
     * @param mm how far
     * @throws IllegalArgumentException if there is no such stance, or the trailer doesn't dock
     */
    Scene drawnAway(String stance, String trailer, double mm);

    /**
     * A trailer by itself with what is on it, its movers as a stance has them, in its own frame.
     *
     * @throws IllegalArgumentException if there is no such stance or trailer
     */
    Scene alone(String stance, String trailer);

    /**
     * What a trailer's road envelope is counted from, in its own frame.
     *
     * @throws IllegalArgumentException if there is no such trailer
     */
    Deck deck(String trailer);

    /** Runs and lines that go from one trailer to another, in the order of the file. */
    List<Crossing> crossings();

    /**
     * Something that moves.
     *
     * @param id as stances name it
     * @param path where it is told
     * @param title in people's words
     * @param trailer it is on
     * @param unit of its position: mm or deg
     * @param full its position wide open; shut it is 0
     * @param leaf whether it is the leaf of an opening
     * @param carrier the mover it rides, if it rides one
     */
    record Mover(
            String id,
            String path,
            String title,
            String trailer,
            String unit,
            double full,
            boolean leaf,
            Optional<String> carrier) {}

    /**
     * A trailer's way to its dock.
     *
     * @param trailer that comes
     * @param path of its dock
     * @param host that stands
     * @param away unit vector of the way it leaves, in the site frame
     */
    record Approach(String trailer, String path, String host, Vector3D away) {}

    /**
     * A trailer's bare outside.
     *
     * @param rear and front: x of the deck's edges
     * @param right and left: y of the deck's edges
     * @param road z of the road; absent if nobody said how high the deck is
     * @param nose x of the coupling, if it was told from the front
     */
    record Deck(Stack rear, Stack front, Stack right, Stack left, Optional<Stack> road, Optional<Stack> nose) {}

    /**
     * A run or line from one trailer to another.
     *
     * @param path where it is told
     * @param title in people's words
     * @param from the trailer it starts on
     * @param to the trailer it ends on
     * @param parts path of the leg that comes out for the road; absent if none does
     * @param bridgedMm how much of its middle line lies beyond both decks
     */
    record Crossing(String path, String title, String from, String to, Optional<String> parts, double bridgedMm) {}
}
