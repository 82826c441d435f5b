package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.planar.PlanarGap;
import org.spile.geometry.kernel.solid.Prism;

/**
 * The signed distance of two upright prisms.
 *
 * <p>Let d2 be the signed distance of the plan shapes and dz that of the height ranges. Apart both ways the distance
 * is √(d2² + dz²); apart one way it is that one; overlapping both ways the depth is the lesser, that is the signed
 * distance is the greater of d2 and dz. Concave plan shapes need no cutting up.
 */
final class PrismPair {
    private final PlanarGap plan = new PlanarGap();
    private final SharedPoint shared = new SharedPoint();
    private Prism a;
    private Prism b;
    private double planLower;
    private double planUpper;
    private double heightMm;
    private double roundMm;

    void measure(Prism first, Prism second) {
        a = first;
        b = second;
        plan.measure(first.footprint(), second.footprint());
        planLower = plan.lowerMm();
        planUpper = plan.distanceMm();
        heightMm = Math.max(second.bottomMm() - first.topMm(), first.bottomMm() - second.topMm());
        roundMm = first.roundMm() + second.roundMm();
    }

    double lowerMm() {
        return combined(planLower) - roundMm;
    }

    double upperMm() {
        return combined(planUpper) - roundMm;
    }

    private double combined(double planMm) {
        return planMm > 0 && heightMm > 0
                ? Math.sqrt(planMm * planMm + heightMm * heightMm)
                : Math.max(planMm, heightMm);
    }

    void locate(Witness found) {
        boolean bAbove = b.bottomMm() - a.topMm() >= a.bottomMm() - b.topMm();
        double sign = bAbove ? 1 : -1;
        boolean byPlan = planUpper > 0 || planUpper >= heightMm;
        boolean byHeight = heightMm > 0 || heightMm > planUpper;
        double faceA = bAbove ? a.topMm() : a.bottomMm();
        double faceB = bAbove ? b.bottomMm() : b.topMm();
        double common = (Math.max(a.bottomMm(), b.bottomMm()) + Math.min(a.topMm(), b.topMm())) / 2;
        if (byPlan) {
            double distance = Math.hypot(planUpper, heightMm);
            double level = byHeight ? planUpper / distance : 1;
            found.direction(
                    plan.directionX() * level, plan.directionY() * level, byHeight ? sign * heightMm / distance : 0);
            found.onA(plan.onAx(), plan.onAy(), byHeight ? faceA : common);
            found.onB(plan.onBx(), plan.onBy(), byHeight ? faceB : common);
        } else {
            shared.find(a.cores(), b.cores(), plan);
            found.direction(0, 0, sign);
            found.onA(shared.x, shared.y, faceA);
            found.onB(shared.x, shared.y, faceB);
        }
        found.outward(found.nx, found.ny, found.nz, a.roundMm(), b.roundMm());
    }
}
