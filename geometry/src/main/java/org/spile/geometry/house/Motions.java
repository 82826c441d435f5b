package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Spot;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.house.told.ToldHinge;
import org.spile.geometry.house.told.ToldSlide;

/** Makes motions of told slides and hinges. */
final class Motions {
    private static final double FLAT_DEG = 180;

    private final Readings readings;
    private final Troubles troubles;

    Motions(Readings readings, Troubles troubles) {
        this.readings = readings;
        this.troubles = troubles;
    }

    /**
     * The slide or the hinge; a trouble if there is neither, or if it can't be.
     *
     * @param framed whether it is set into a surface, which it can't turn through
     */
    Optional<Motion> of(String path, Block box, List<ToldSlide> slides, Optional<ToldHinge> hinge, boolean framed) {
        if (hinge.isPresent() == !slides.isEmpty()) {
            troubles.wrong(
                    path,
                    slides.isEmpty() ? "doesn't say how it moves" : "has a hinge and a slide",
                    "Write slides: {forward: 600} or hinge: {edge: left, opens: down}; a leaf that does both is two movers, "
                            + "one that rides the other.");
            return Optional.empty();
        }
        hinge.filter(turning -> framed && readings.now(turning.by()).value() > FLAT_DEG)
                .ifPresent(turning -> troubles.wrong(
                        turning.by().path(),
                        "turns by "
                                + AxisPlacing.number(readings.now(turning.by()).value())
                                + " deg, through the frame it is set in",
                        "Flat against the other side of its frame it has turned by 180 deg."));
        return hinge.isPresent() ? swing(hinge.get(), box) : slide(slides);
    }

    private Optional<Motion> slide(List<ToldSlide> slides) {
        List<Motion.Leg> legs = new ArrayList<>();
        for (ToldSlide slide : slides) {
            Optional<Way> way = way(slide.way(), slide.path());
            if (way.isEmpty()) {
                return Optional.empty();
            }
            legs.add(new Motion.Leg(way.get(), readings.of(slide.travel())));
        }
        return Optional.of(new Motion.Slide(legs));
    }

    /** The pin lies on the edge that stays, in the face the leaf opens to. */
    private Optional<Motion> swing(ToldHinge hinge, Block box) {
        Optional<Way> edge = Way.outOf(hinge.edge());
        Optional<Way> opens = way(hinge.opens(), hinge.path() + ".opens");
        if (edge.isEmpty()) {
            troubles.wrong(
                    hinge.path() + ".edge",
                    "there is no edge \"" + hinge.edge() + "\"",
                    "An edge is one of " + String.join(", ", Way.faces()) + ".");
        }
        if (edge.isEmpty() || opens.isEmpty()) {
            return Optional.empty();
        }
        if (edge.get().axis() == opens.get().axis()) {
            troubles.wrong(
                    hinge.path(),
                    "a leaf can't turn about its " + hinge.edge() + " edge and go " + hinge.opens() + " first",
                    "Name an edge square to the way it opens.");
            return Optional.empty();
        }
        Axis across = edge.get().axis();
        Axis through = opens.get().axis();
        Spot pin = box.middle()
                .with(across, box.get(across).end(edge.get()))
                .with(through, box.get(through).end(opens.get()));
        Vector3D leaf = edge.get().opposite().unit();
        return Optional.of(new Motion.Swing(pin, leaf.cross(opens.get().unit()), readings.of(hinge.by())));
    }

    private Optional<Way> way(String word, String path) {
        Optional<Way> way = Way.named(word);
        if (way.isEmpty()) {
            troubles.wrong(
                    path,
                    "there is no way \"" + word + "\"",
                    "A way is one of " + String.join(", ", Way.words()) + ".");
        }
        return way;
    }
}
