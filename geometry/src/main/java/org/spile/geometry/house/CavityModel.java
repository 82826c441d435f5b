package org.spile.geometry.house;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.planar.Regions;
import org.spile.geometry.kernel.solid.Move;

/** A cavity in a scene. */
final class CavityModel implements CavitySpace {
    private final Cavity cavity;
    private final Site site;
    private final List<Part> linings;

    CavityModel(Cavity cavity, Rigid toSite, List<Part> linings) {
        this.cavity = cavity;
        this.site = new Site(toSite);
        this.linings = List.copyOf(linings);
    }

    @Override
    public String id() {
        return cavity.id();
    }

    @Override
    public String path() {
        return cavity.path();
    }

    @Override
    public String title() {
        return cavity.told().placed().title();
    }

    @Override
    public String trailer() {
        return cavity.trailer().id();
    }

    @Override
    public Outline outline() {
        return site.out(cavity.clear().outline());
    }

    @Override
    public Depth leastDepth(Outline footprint) {
        Outline clear = cavity.clear().outline();
        Depths.At least = null;
        for (Outline piece : Site.within(site.in(footprint), clear, cavity.id())) {
            Depths.At here = Depths.of(cavity).least(piece);
            least = least == null || here.depth().valueMm() < least.depth().valueMm() ? here : least;
        }
        return site.out(least);
    }

    @Override
    public List<Outline> shallower(double depthMm) {
        return Shallows.of(Depths.of(cavity), cavity.clear().outline(), depthMm).stream()
                .map(site::out)
                .toList();
    }

    @Override
    public List<Part> linings() {
        return linings;
    }

    @Override
    public String dropPath() {
        return cavity.dropPath();
    }

    @Override
    public boolean hasCeiling() {
        return cavity.hasCeiling();
    }

    @Override
    public String over() {
        return cavity.over().map(Room::id).orElse("");
    }

    @Override
    public String toString() {
        return "cavity " + id();
    }

    /** From a trailer's frame to the site's and back. */
    record Site(Rigid toSite) {
        Outline out(Outline plan) {
            return turned(plan, toSite.nominal());
        }

        Outline in(Outline plan) {
            return turned(plan, toSite.nominal().inverse());
        }

        private static Outline turned(Outline plan, Move move) {
            return plan.mapped(
                    move.rotation(0, 0),
                    move.rotation(0, 1),
                    move.rotation(1, 0),
                    move.rotation(1, 1),
                    move.shift().getX(),
                    move.shift().getY());
        }

        Depth out(Depths.At at) {
            return new Depth(point(at.place(), at.low()), point(at.place(), at.high()), at.depth());
        }

        private Vector3D point(Vector2D place, Stack height) {
            return toSite.nominal().apply(Vector3D.of(place.getX(), place.getY(), height.valueMm()));
        }

        /** The pieces of a footprint within an outline. */
        static List<Outline> within(Outline footprint, Outline outline, String id) {
            if (outline.isConvex() && footprint.shell().stream().allMatch(outline::contains)) {
                return List.of(footprint);
            }
            List<Outline> pieces = Regions.intersection(List.of(footprint), List.of(outline));
            if (pieces.isEmpty()) {
                throw new IllegalArgumentException(footprint + " lies outside " + id);
            }
            return pieces;
        }
    }
}
