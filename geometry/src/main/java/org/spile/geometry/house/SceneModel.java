package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.spot.Shape;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Move;

/** The model in one stance, in the site frame. */
final class SceneModel implements Scene {
    private final Model model;
    private final String stance;
    private final Map<String, Double> positions;
    private final Map<String, Rigid> trailers;
    private final String leaving;
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final List<CavitySpace> cavities = new ArrayList<>();
    private final List<RoomSpace> rooms = new ArrayList<>();
    private final List<Mouth> mouths = new ArrayList<>();

    /** The stance as it is told. */
    static SceneModel of(Model model, String stance) {
        return with(model, stance, Map.of());
    }

    /** The stance with some movers at other positions. */
    static SceneModel with(Model model, String stance, Map<String, Double> positions) {
        return new SceneModel(model, stance, positions, there(model, stance), "");
    }

    private static Map<String, Rigid> there(Model model, String stance) {
        Map<String, Rigid> trailers = new LinkedHashMap<>();
        for (String id : model.spaces().trailers().keySet()) {
            if (!model.stances().away(stance, id)) {
                model.docking().toSite(id).ifPresent(rigid -> trailers.put(id, rigid));
            }
        }
        return trailers;
    }

    /** The stance with a trailer shifted, and without what comes out when it leaves. */
    static SceneModel drawnAway(Model model, String stance, String trailer, Vector3D by) {
        Map<String, Rigid> trailers = there(model, stance);
        trailers.computeIfPresent(trailer, (id, rigid) -> rigid.then(Rigid.shift(Spot.of(by))));
        return new SceneModel(model, stance, Map.of(), trailers, trailer);
    }

    /** One trailer of the stance in its own frame. */
    static SceneModel alone(Model model, String stance, String trailer) {
        return new SceneModel(model, stance, Map.of(), Map.of(trailer, Rigid.NONE), "");
    }

    private SceneModel(
            Model model, String stance, Map<String, Double> positions, Map<String, Rigid> trailers, String leaving) {
        this.model = model;
        this.stance = stance;
        this.positions = Collections.unmodifiableMap(new LinkedHashMap<>(positions));
        this.trailers = trailers;
        this.leaving = leaving;
        model.pieces().stream().filter(this::here).forEach(piece -> parts.put(piece.id(), part(piece)));
        spaces();
        for (Opening opening : model.openings()) {
            Rigid rigid = trailers.get(opening.trailer());
            if (rigid != null) {
                mouths.add(opening.mouth(rigid));
            }
        }
    }

    private void spaces() {
        for (Cavity cavity : model.spaces().cavities().values()) {
            Rigid rigid = trailers.get(cavity.trailer().id());
            if (rigid != null) {
                List<Part> linings = parts.values().stream()
                        .filter(part -> part.thing().equals(cavity.path()))
                        .toList();
                cavities.add(new CavityModel(cavity, rigid, linings));
            }
        }
        for (Room room : model.spaces().rooms().values()) {
            Rigid rigid = trailers.get(room.trailer().id());
            if (rigid != null) {
                rooms.add(new RoomModel(room, rigid));
            }
        }
    }

    private boolean here(Piece piece) {
        return trailers.containsKey(piece.trailer())
                && (piece.needs().isEmpty() || (trailers.containsKey(piece.needs()) && !comesOut(piece)));
    }

    /** What parts a joint is out as soon as one of the two leaves. */
    private boolean comesOut(Piece piece) {
        return !leaving.isEmpty()
                && (piece.needs().equals(leaving) || piece.trailer().equals(leaving));
    }

    /** From a mover's trailer to the site, with the motion of what it rides; absent if its trailer isn't there. */
    Optional<Move> frame(MoverPlace place) {
        return Optional.ofNullable(trailers.get(place.stood().in().trailer()))
                .map(rigid -> moved(place.rides()).then(rigid).nominal());
    }

    private Part part(Piece piece) {
        Rigid rigid = sways(piece).then(moved(piece.mover())).then(trailers.get(piece.trailer()));
        Shape shape = piece.shape().moved(rigid);
        Optional<Body> shown = piece.shown()
                .map(s ->
                        s.equals(piece.shape()) ? shape.body() : s.moved(rigid).body());
        return new Part(
                piece.id(),
                piece.thing(),
                piece.kind(),
                piece.title(),
                piece.spaces(),
                piece.trailer(),
                shape.body(),
                new PartFlex(shape.give()),
                shown);
    }

    /** On the road a unit may shift. */
    private Rigid sways(Piece piece) {
        Spot by = model.sways().get(piece.thing());
        return by == null || piece.kind() != PartKind.UNIT || !road() ? Rigid.NONE : Rigid.shift(by);
    }

    /** The motion of a mover in this stance, and of what it rides. */
    private Rigid moved(String mover) {
        Rigid rigid = Rigid.NONE;
        String at = mover;
        while (!at.isEmpty()) {
            MoverPlace place = model.movers().get(at);
            if (place == null) {
                break;
            }
            Stack position = position(place);
            boolean home = position.valueMm() == 0 && position.layers().isEmpty();
            rigid = home ? rigid : rigid.then(place.to(position));
            at = place.rides();
        }
        return rigid;
    }

    private Stack position(MoverPlace place) {
        Double elsewhere = positions.get(place.id());
        return elsewhere == null ? model.stances().position(stance, place) : Stack.constant(elsewhere);
    }

    @Override
    public String stance() {
        return stance;
    }

    @Override
    public boolean road() {
        return model.stances().road(stance);
    }

    @Override
    public List<Part> parts() {
        return List.copyOf(parts.values());
    }

    @Override
    public Optional<Part> part(String id) {
        return Optional.ofNullable(parts.get(id));
    }

    @Override
    public List<CavitySpace> cavities() {
        return List.copyOf(cavities);
    }

    @Override
    public List<RoomSpace> rooms() {
        return List.copyOf(rooms);
    }

    @Override
    public List<Mouth> mouths() {
        return List.copyOf(mouths);
    }

    @Override
    public List<TrailerPlace> trailers() {
        return trailers.entrySet().stream()
                .map(entry -> new TrailerPlace(entry.getKey(), entry.getValue().nominal()))
                .toList();
    }

    @Override
    public Optional<Tie> tie(Part a, Part b) {
        return model.ties().between(a, b);
    }

    @Override
    public Optional<Vector3D> outward(String unit, String face) {
        return model.units().stream()
                .filter(place -> place.id().equals(unit) && trailers.containsKey(place.trailer()))
                .findFirst()
                .flatMap(place -> place.outward(face)
                        .map(way -> trailers.get(place.trailer()).nominal().applyDirection(way)));
    }
}
