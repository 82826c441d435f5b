package org.spile.geometry.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.spile.geometry.house.CavityModel.Site;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Plan;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.house.spot.Slope;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;

/** A room in a scene. */
final class RoomModel implements RoomSpace {
    private final Room room;
    private final Rigid toSite;
    private final Site site;

    RoomModel(Room room, Rigid toSite) {
        this.room = room;
        this.toSite = toSite;
        this.site = new Site(toSite);
    }

    @Override
    public String id() {
        return room.id();
    }

    @Override
    public String path() {
        return room.told().placed().path();
    }

    @Override
    public String title() {
        return room.told().placed().title();
    }

    @Override
    public String trailer() {
        return room.trailer().id();
    }

    @Override
    public Outline outline() {
        return site.out(room.plan().outline());
    }

    @Override
    public Stack floor() {
        return toSite.apply(room.plan().corners().get(0).with(Axis.Z, room.floor()))
                .z();
    }

    @Override
    public CavitySpace.Depth leastHeight(Outline footprint) {
        List<Outline> open = Site.within(site.in(footprint), room.plan().outline(), room.id());
        List<Depths.At> heights = new ArrayList<>();
        for (Surface.Patch patch : room.ceilings()) {
            Outline plan = Plan.rectangle(patch.x(), patch.y()).outline();
            heights.addAll(heights(patch.at(), Regions.intersection(open, List.of(plan))));
            open = Regions.difference(open, List.of(plan));
        }
        List<Outline> rest = open;
        room.upperLined().ifPresent(upper -> heights.addAll(heights(upper, rest)));
        return heights.stream()
                .reduce((a, b) -> b.depth().valueMm() < a.depth().valueMm() ? b : a)
                .map(site::out)
                .orElseThrow(() -> new IllegalArgumentException(room.id() + " has no ceiling over " + footprint));
    }

    private List<Depths.At> heights(Slope upper, List<Outline> pieces) {
        Depths depths = new Depths(Slope.level(room.floor()), upper, Map.of());
        return pieces.stream().map(depths::least).toList();
    }

    @Override
    public String toString() {
        return "room " + id();
    }
}
