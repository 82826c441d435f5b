package org.spile.analysis.finding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Travels;
import org.spile.geometry.kernel.clearance.Travel;

/**
 * A house made by hand in which nothing moves.
 *
 * @param scenes by stance
 */
public record NothingMoves(Function<String, Scene> scenes) implements Travels {
    @Override
    public List<Mover> movers() {
        return List.of();
    }

    @Override
    public List<Approach> approaches() {
        return List.of();
    }

    @Override
    public double position(String stance, String mover) {
        throw new IllegalArgumentException("no mover \"" + mover + "\"");
    }

    @Override
    public Scene scene(String stance, Map<String, Double> positions) {
        return scenes.apply(stance);
    }

    @Override
    public Deck deck(String trailer) {
        throw new IllegalArgumentException("no trailer \"" + trailer + "\"");
    }

    @Override
    public List<Crossing> crossings() {
        return List.of();
    }

    @Override
    public Optional<Travel> motion(String stance, Map<String, Double> positions, String mover) {
        throw new IllegalArgumentException("no mover \"" + mover + "\"");
    }

    @Override
    public List<String> carried(String mover) {
        throw new IllegalArgumentException("no mover \"" + mover + "\"");
    }

    @Override
    public Scene drawnAway(String stance, String trailer, double mm) {
        throw new IllegalArgumentException("trailer \"" + trailer + "\" doesn't dock");
    }

    @Override
    public Scene alone(String stance, String trailer) {
        return scenes.apply(stance);
    }
}
