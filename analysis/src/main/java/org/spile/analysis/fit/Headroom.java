package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.Source;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.RoomSpace;
import org.spile.geometry.house.told.ToldFixture;
import org.spile.geometry.house.told.ToldHouse;
import org.spile.geometry.house.told.ToldRoom;
import org.spile.geometry.kernel.measure.Origin;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Box3;

/**
 * Standing height of each room: from the finished floor to the ceiling, or to what hangs below it, wherever nothing stands
 * on the floor.
 */
final class Headroom implements FitCheck {
    /** What reaches below this is walked round, not under [common practice, no source]. */
    private static final double WALKED_UNDER_MM = 1200;

    private static final double SHEET_MM = 0.1;

    /** The lowest height that a published code for small houses allows in any room. */
    private static final Demand CITED = new Demand(
            1930,
            0,
            Source.published(
                    "model residential code, appendix for tiny houses: bathrooms and kitchens 1 930 mm, ducts and"
                            + " lights not below it (other rooms people live in: 2 032 mm)"),
            Optional.of("limits.headroom"));

    @Override
    public String name() {
        return "fit.headroom";
    }

    @Override
    public List<Answer> answers(Site site) {
        List<Answer> answers = new ArrayList<>();
        for (RoomSpace room : site.scene().rooms()) {
            if (site.asksOver(Plan.bounds(room.outline()))) {
                worst(site, room).ifPresent(answers::add);
            }
        }
        return answers;
    }

    @Override
    public List<Ban> bans(Site site, String unit) {
        List<Ban> bans = new ArrayList<>();
        for (RoomSpace room : site.scene().rooms()) {
            Demand demand = demand(site.house(), room);
            double floorMm = room.floor().valueMm();
            Limit limit = new Limit(
                    name() + "/" + room.path(),
                    name(),
                    Mm.text(demand.mm()) + " to stand under in " + room.title(),
                    demand.mm(),
                    demand.source());
            List<Part> mine = site.asksOver(Plan.bounds(room.outline())) ? site.solidsOf(unit) : List.of();
            for (Part part : mine) {
                bans.add(
                        Ban.of(limit, room.path(), room.title(), askedMm -> under(site, room, part, floorMm, askedMm)));
            }
        }
        return bans;
    }

    /** The lowest of a part must not come between where one walks round it and the headroom, over the free floor. */
    private static List<Ban.Apart> under(Site site, RoomSpace room, Part part, double floorMm, double askedMm) {
        List<Outline> free = askedMm > WALKED_UNDER_MM ? free(site, room, floorMm) : List.of();
        if (free.isEmpty()) {
            return List.of();
        }
        double lowest = part.body().bounds().minZ();
        Body bottom = Plan.upright(Plan.of(part.body()), lowest, lowest + SHEET_MM);
        Body heads = Plan.upright(free, floorMm + WALKED_UNDER_MM, floorMm + askedMm);
        return List.of(new Ban.Apart(bottom, heads, 0));
    }

    private Optional<Answer> worst(Site site, RoomSpace room) {
        Demand demand = demand(site.house(), room);
        double floorMm = room.floor().valueMm();
        List<Outline> free = free(site, room, floorMm);
        List<Answer> answers = new ArrayList<>();
        for (Outline piece : free) {
            answers.add(underCeiling(site, room, piece, demand));
        }
        double ceilingMm = room.leastHeight(room.outline()).high().getZ();
        for (Part part : site.near(under(room, floorMm + WALKED_UNDER_MM, ceilingMm), 0)) {
            if (hangs(site.house().told(), part, floorMm)
                    && !Regions.intersection(Plan.of(part.body()), free).isEmpty()) {
                answers.add(under(site, room, part, demand));
            }
        }
        return answers.stream().min(Worst.FIRST);
    }

    private Answer underCeiling(Site site, RoomSpace room, Outline piece, Demand demand) {
        CavitySpace.Depth height = room.leastHeight(piece);
        Outcome outcome = Outcome.of(height.stack(), demand);
        String head = room.title() + " is " + Mm.besides(outcome.lowMm(), demand.mm()) + " high at its lowest";
        return Answer.of(
                Question.of(name(), room.path(), site.stance()),
                new Ends(height.low(), height.high()),
                outcome,
                head,
                Plan.bounds(room.outline()));
    }

    private Answer under(Site site, RoomSpace room, Part part, Demand demand) {
        Vector3D lowest = Farthest.of(part.body(), Vector3D.Unit.MINUS_Z);
        Stack stack = part.flex().along(lowest, Vector3D.Unit.PLUS_Z).minus(room.floor());
        double floorMm = room.floor().valueMm();
        double heightMm = lowest.getZ() - floorMm;
        Outcome outcome = new Outcome(heightMm, heightMm, stack, demand);
        String head =
                part.title() + " hangs " + Mm.besides(heightMm, demand.mm()) + " above the floor of " + room.title();
        Ends ends = new Ends(Vector3D.of(lowest.getX(), lowest.getY(), floorMm), lowest);
        Question question = Question.of(name(), room.path(), site.stance());
        return Answer.of(question, ends, outcome, head, Plan.bounds(room.outline()));
    }

    /** The room's floor without what stands on it. */
    private static List<Outline> free(Site site, RoomSpace room, double floorMm) {
        List<Outline> standing = new ArrayList<>();
        for (Part part : site.near(under(room, floorMm, floorMm + WALKED_UNDER_MM), 0)) {
            boolean onFloor = part.body().bounds().minZ() < floorMm + WALKED_UNDER_MM
                    && part.body().bounds().maxZ() > floorMm;
            if (part.kind() == PartKind.FIXTURE && onFloor) {
                standing.addAll(Plan.of(part.body()));
            }
        }
        List<Outline> whole = List.of(room.outline());
        return standing.isEmpty() ? whole : Regions.difference(whole, standing);
    }

    /** The box round a room's plan, from a height to another. */
    private static Box3 under(RoomSpace room, double fromMm, double toMm) {
        Outline plan = room.outline();
        double top = Math.max(fromMm, toMm);
        return new Box3(plan.minX(), plan.minY(), fromMm, plan.maxX(), plan.maxY(), top);
    }

    /** Ducts, pipes, units and beams may hang in the way of a head; furniture on a wall is where its owner wants it. */
    private static boolean hangs(ToldHouse told, Part part, double floorMm) {
        Box3 bounds = part.body().bounds();
        boolean above = bounds.minZ() >= floorMm + WALKED_UNDER_MM;
        return above
                && switch (part.kind()) {
                    case UNIT, DUCT, LINE, TERMINAL -> true;
                    case FIXTURE -> structure(told, part);
                    case MOVER, SERVICE, LINING, SHELL -> false;
                };
    }

    private static boolean structure(ToldHouse told, Part part) {
        return told.fixtures().values().stream()
                .filter(fixture -> fixture.placed().path().equals(part.thing()))
                .map(ToldFixture::kind)
                .anyMatch(kind -> List.of("rail", "beam", "pipe", "stud").contains(kind));
    }

    private static Demand demand(House house, RoomSpace room) {
        ToldRoom toldRoom = house.told().rooms().get(room.id());
        return typed(toldRoom == null ? Optional.empty() : toldRoom.headroom())
                .or(() -> typed(house.told().limits().headroom()))
                .map(reading -> Demand.typed(house.now(reading)))
                .orElse(CITED);
    }

    private static Optional<Reading> typed(Optional<Reading> reading) {
        return reading.filter(said -> said.origin() != Origin.DEFAULT);
    }
}
