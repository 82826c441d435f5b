package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Span;
import org.spile.geometry.kernel.clearance.Travel;
import org.spile.geometry.kernel.solid.Move;

/** What moves in a model. */
final class TravelsModel implements Travels {
    private static final double FLAT_MM = 1e-9;

    private final Model model;
    private final List<Mover> movers;
    private final List<Approach> approaches;

    TravelsModel(Model model) {
        this.model = model;
        this.movers = model.movers().values().stream().map(TravelsModel::mover).toList();
        this.approaches = approaches(model);
    }

    private static Mover mover(MoverPlace place) {
        return new Mover(
                place.id(),
                place.path(),
                place.stood().placed().title(),
                place.stood().in().trailer(),
                place.motion().unit(),
                place.motion().full().valueMm(),
                !place.path().startsWith("movers."),
                Optional.of(place.rides()).filter(rides -> !rides.isEmpty()));
    }

    private static List<Approach> approaches(Model model) {
        List<Approach> approaches = new ArrayList<>();
        for (Trailer trailer : model.spaces().trailers().values()) {
            model.docking().approach(trailer.id()).ifPresent(approaches::add);
        }
        return List.copyOf(approaches);
    }

    @Override
    public List<Mover> movers() {
        return movers;
    }

    @Override
    public List<Approach> approaches() {
        return approaches;
    }

    @Override
    public double position(String stance, String mover) {
        checked(stance);
        return model.stances().position(stance, place(mover)).valueMm();
    }

    @Override
    public Scene scene(String stance, Map<String, Double> positions) {
        checked(stance);
        positions.keySet().forEach(this::place);
        return SceneModel.with(model, stance, positions);
    }

    @Override
    public Scene alone(String stance, String trailer) {
        checked(stance);
        if (!model.spaces().trailers().containsKey(trailer)) {
            throw new IllegalArgumentException("no trailer \"" + trailer + "\"");
        }
        return SceneModel.alone(model, stance, trailer);
    }

    @Override
    public Optional<Travel> motion(String stance, Map<String, Double> positions, String mover) {
        MoverPlace place = place(mover);
        return SceneModel.with(model, stance, positions)
                .frame(place)
                .map(frame ->
                        place.motion().travel(place.stood().turn().nominal().then(frame)));
    }

    @Override
    public List<String> carried(String mover) {
        place(mover);
        return model.pieces().stream()
                .filter(piece -> rides(piece.mover(), mover))
                .map(Piece::id)
                .toList();
    }

    private boolean rides(String rider, String mover) {
        String at = rider;
        while (!at.isEmpty() && !at.equals(mover)) {
            MoverPlace place = model.movers().get(at);
            at = place == null ? "" : place.rides();
        }
        return at.equals(mover);
    }

    @Override
    public Scene drawnAway(String stance, String trailer, double mm) {
        checked(stance);
        Approach approach = approaches.stream()
                .filter(there -> there.trailer().equals(trailer))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("trailer \"" + trailer + "\" doesn't dock"));
        return SceneModel.drawnAway(model, stance, trailer, approach.away().multiply(mm));
    }

    @Override
    public Deck deck(String trailer) {
        Trailer deck = model.spaces().trailers().get(trailer);
        if (deck == null) {
            throw new IllegalArgumentException("no trailer \"" + trailer + "\"");
        }
        return model.decks().get(trailer);
    }

    @Override
    public List<Crossing> crossings() {
        List<Crossing> crossings = new ArrayList<>();
        for (Pathway way : model.ways()) {
            String from = way.legs().get(0).trailer();
            String to = way.target().trailer();
            if (!from.equals(to)) {
                crossings.add(new Crossing(
                        way.course().path(),
                        way.course().title(),
                        from,
                        to,
                        way.legs().stream().filter(Leg::comesOut).map(Leg::path).findFirst(),
                        bridgedMm(way)));
            }
        }
        return List.copyOf(crossings);
    }

    /** A leg is on one deck, on the other, or between them; those on the far side of a parted joint are on the other. */
    private double bridgedMm(Pathway way) {
        String from = way.legs().get(0).trailer();
        double bridged = 0;
        for (Leg leg : way.legs()) {
            if (leg.trailer().equals(from)) {
                Vector3D start = leg.from().at();
                Vector3D end = leg.to().at();
                bridged += end.distance(start) - onDeck(from, start, end);
                Optional<Move> back = between(from, way.target().trailer());
                if (back.isPresent()) {
                    bridged -= onDeck(
                            way.target().trailer(),
                            back.get().apply(start),
                            back.get().apply(end));
                }
            }
        }
        return Math.max(0, bridged);
    }

    private Optional<Move> between(String from, String to) {
        return model.docking()
                .toSite(from)
                .flatMap(one -> model.docking()
                        .toSite(to)
                        .map(other -> one.nominal().then(other.nominal().inverse())));
    }

    /** How much of a piece of a middle line lies over a deck (mm). */
    private double onDeck(String trailer, Vector3D start, Vector3D end) {
        Plan deck = model.spaces().trailers().get(trailer).deck();
        double low = 0;
        double high = 1;
        for (Axis axis : List.of(Axis.X, Axis.Y)) {
            Span span = deck.extent(axis);
            double from = axis.of(start);
            double way = axis.of(end) - from;
            if (Math.abs(way) < FLAT_MM) {
                boolean inside =
                        from >= span.low().valueMm() && from <= span.high().valueMm();
                high = inside ? high : low;
            } else {
                double one = (span.low().valueMm() - from) / way;
                double other = (span.high().valueMm() - from) / way;
                low = Math.max(low, Math.min(one, other));
                high = Math.min(high, Math.max(one, other));
            }
        }
        return Math.max(0, high - low) * end.distance(start);
    }

    private MoverPlace place(String mover) {
        MoverPlace place = model.movers().get(mover);
        if (place == null) {
            throw new IllegalArgumentException("no mover \"" + mover + "\"");
        }
        return place;
    }

    private void checked(String stance) {
        if (!model.stances().ids().contains(stance)) {
            throw new IllegalArgumentException("no stance \"" + stance + "\"");
        }
    }
}
