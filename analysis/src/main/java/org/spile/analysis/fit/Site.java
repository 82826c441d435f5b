package org.spile.analysis.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.House;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.duct.DuctLeg;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.told.ToldUnit;
import org.spile.geometry.kernel.clearance.BroadPhase;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.Move;

/**
 * A house in one stance, laid out for asking: its solid things, what lies near what, and who asks for what.
 *
 * <p>Rooms for service aren't solid: nothing has to keep clear of them but what would stand in them.
 */
final class Site {
    private final House house;
    private final Scene scene;
    private final List<Changes> changes;
    private final Demand general;
    private final List<Part> solids;
    private final BroadPhase tree;
    private final Map<String, ToldUnit> units;

    private Site(House house, Scene scene) {
        this.house = house;
        this.scene = scene;
        this.changes = List.of();
        this.general = Demand.general(house);
        this.solids = scene.parts().stream()
                .filter(part -> part.kind() != PartKind.SERVICE)
                .toList();
        this.tree =
                BroadPhase.of(solids.stream().map(part -> part.body().bounds()).toList());
        this.units = new HashMap<>();
        house.told().units().values().forEach(unit -> units.put(unit.placed().path(), unit));
    }

    private Site(Site site, Changes since) {
        this.house = site.house;
        this.scene = site.scene;
        this.general = site.general;
        this.solids = site.solids;
        this.tree = site.tree;
        this.units = site.units;
        List<Changes> all = new ArrayList<>(site.changes);
        all.add(since);
        this.changes = List.copyOf(all);
    }

    static Site of(House house, String stance) {
        return new Site(house, house.scene(stance));
    }

    /** The same, to be asked only about what changed from another scene too. */
    Site narrowed(Changes since) {
        return new Site(this, since);
    }

    /** Whether two parts have to be held against each other; if not, what was found before still holds. */
    boolean asks(Part one, Part other) {
        return changes.stream().allMatch(since -> since.concern(one) || since.concern(other));
    }

    /** Whether anything over or under a place has to be looked at. */
    boolean asksOver(Box3 place) {
        return changes.stream().allMatch(since -> since.concern(place));
    }

    House house() {
        return house;
    }

    Scene scene() {
        return scene;
    }

    String stance() {
        return scene.stance();
    }

    /** The clearance round everything. */
    Demand general() {
        return general;
    }

    /** Everything that takes room, in the order of the file. */
    List<Part> solids() {
        return solids;
    }

    /** The solid parts whose bounds come within a reach of a box, in the order of the file. */
    List<Part> near(Box3 box, double reachMm) {
        return Arrays.stream(nearIndices(box, reachMm)).mapToObj(solids::get).toList();
    }

    /** The places in {@link #solids} of the parts whose bounds come within a reach of a box, in the order of the file. */
    int[] nearIndices(Box3 box, double reachMm) {
        return tree.near(box, reachMm);
    }

    /** How far along its run a point of a duct's leg lies, on the middle line from the run's start (mm). */
    Optional<Double> station(Part leg, Vector3D point) {
        for (DuctRun run : house.runs()) {
            double before = 0;
            for (DuctLeg piece : run.legs()) {
                if (piece.path().equals(leg.id())) {
                    Vector3D inFrame = toSite(piece.trailer()).inverse().apply(point);
                    Vector3D way = piece.to().subtract(piece.from()).normalize();
                    double along = inFrame.subtract(piece.from()).dot(way);
                    return Optional.of(before + Math.max(0, Math.min(piece.lengthMm(), along)));
                }
                before += piece.lengthMm();
            }
        }
        return Optional.empty();
    }

    /** The rooms for service, in the order of the file. */
    List<Part> serviceRooms() {
        return scene.parts().stream()
                .filter(part -> part.kind() == PartKind.SERVICE)
                .toList();
    }

    /** The units' first bodies, whose faces the maker's demands count from; in the order of the file. */
    List<Part> unitBodies() {
        return solids.stream()
                .filter(part -> part.kind() == PartKind.UNIT && part.id().equals(part.thing()))
                .toList();
    }

    /** The unit that a part belongs to. */
    Optional<ToldUnit> unit(Part part) {
        return Optional.ofNullable(units.get(part.thing()));
    }

    /** Which way a unit's faces look. */
    UnitFrame frame(Part unitBody) {
        return UnitFrame.of(scene, unit(unitBody).orElseThrow().placed().id());
    }

    /** The cavities that a part lies in. */
    List<CavitySpace> cavitiesOf(Part part) {
        return scene.cavities().stream()
                .filter(cavity -> part.spaces().contains(cavity.id()))
                .toList();
    }

    /** Whether two parts owe each other nothing: parts of one thing, or tied. */
    boolean free(Part one, Part other) {
        return one.thing().equals(other.thing()) || scene.tie(one, other).isPresent();
    }

    private Move toSite(String trailer) {
        return scene.trailers().stream()
                .filter(place -> place.id().equals(trailer))
                .map(Scene.TrailerPlace::toSite)
                .findFirst()
                .orElseGet(Move::identity);
    }

    /** The unit's own bodies that take room. */
    List<Part> solidsOf(String thing) {
        return solids.stream().filter(part -> part.thing().equals(thing)).toList();
    }

    /** Everything that takes room and isn't the unit's. */
    List<Part> solidsBeside(String thing) {
        return solids.stream().filter(part -> !part.thing().equals(thing)).toList();
    }
}
