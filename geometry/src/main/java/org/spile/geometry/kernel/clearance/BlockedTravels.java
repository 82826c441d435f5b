package org.spile.geometry.kernel.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.kernel.planar.GeometryTolerance;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Box3;
import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.Solid;

/** All forbidden travels of some bodies against others, in ascending order of their start. */
final class BlockedTravels {
    private static final Comparator<BlockedTravel> ORDER = Comparator.comparingDouble(
                    (BlockedTravel b) -> b.interval().fromMm())
            .thenComparingInt(BlockedTravel::moving)
            .thenComparingInt(BlockedTravel::fixed)
            .thenComparingDouble(b -> b.interval().toMm());

    private final Vector3D unit;
    private final TravelContact contact = new TravelContact();
    private final List<BlockedTravel> found = new ArrayList<>();

    private BlockedTravels(Vector3D unit) {
        this.unit = unit;
    }

    static List<BlockedTravel> of(List<Body> moving, List<Body> fixed, Vector3D direction, PairMargin margins) {
        BlockedTravels travels = new BlockedTravels(ExitInterval.unit(direction));
        for (int i = 0; i < moving.size(); i++) {
            for (int j = 0; j < fixed.size(); j++) {
                double margin = margins.demandedMm(i, j);
                if (margin != Double.NEGATIVE_INFINITY) {
                    GeometryTolerance.notNegative("margin", margin);
                    travels.add(i, moving.get(i), j, fixed.get(j), margin);
                }
            }
        }
        travels.found.sort(ORDER);
        return travels.found;
    }

    private void add(int i, Body moving, int j, Body fixed, double margin) {
        for (Solid first : moving.solids()) {
            for (Solid second : fixed.solids()) {
                if (!passesBeside(first.bounds(), second.bounds(), margin)) {
                    addCores(i, first, j, second, margin);
                }
            }
        }
    }

    private void addCores(int i, Solid first, int j, Solid second, double margin) {
        for (ConvexCore a : first.cores()) {
            for (ConvexCore b : second.cores()) {
                if (contact.find(a, b, unit.getX(), unit.getY(), unit.getZ(), margin)) {
                    found.add(new BlockedTravel(i, j, new ExitInterval(contact.from, contact.to)));
                }
            }
        }
    }

    /** Quick no: along an axis square to the travel the bounds keep the margin. */
    private boolean passesBeside(Box3 a, Box3 b, double margin) {
        return beside(unit.getX(), a.minX(), a.maxX(), b.minX(), b.maxX(), margin)
                || beside(unit.getY(), a.minY(), a.maxY(), b.minY(), b.maxY(), margin)
                || beside(unit.getZ(), a.minZ(), a.maxZ(), b.minZ(), b.maxZ(), margin);
    }

    private static boolean beside(double slope, double minA, double maxA, double minB, double maxB, double margin) {
        return slope == 0 && Math.max(minB - maxA, minA - maxB) >= margin;
    }
}
