package org.spile.geometry.kernel.clearance;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
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

    Gap gap() {
        boolean bAbove = b.bottomMm() - a.topMm() >= a.bottomMm() - b.topMm();
        double sign = bAbove ? 1 : -1;
        boolean byPlan = planUpper > 0 || planUpper >= heightMm;
        boolean byHeight = heightMm > 0 || heightMm > planUpper;
        double faceA = bAbove ? a.topMm() : a.bottomMm();
        double faceB = bAbove ? b.bottomMm() : b.topMm();
        double common = (Math.max(a.bottomMm(), b.bottomMm()) + Math.min(a.topMm(), b.topMm())) / 2;
        Vector3D direction;
        Vector3D onA;
        Vector3D onB;
        if (byPlan && byHeight) {
            double distance = Math.hypot(planUpper, heightMm);
            direction = Vector3D.of(plan.directionX() * planUpper, plan.directionY() * planUpper, sign * heightMm)
                    .multiply(1 / distance);
            onA = Vector3D.of(plan.onAx(), plan.onAy(), faceA);
            onB = Vector3D.of(plan.onBx(), plan.onBy(), faceB);
        } else if (byPlan) {
            direction = Vector3D.of(plan.directionX(), plan.directionY(), 0);
            onA = Vector3D.of(plan.onAx(), plan.onAy(), common);
            onB = Vector3D.of(plan.onBx(), plan.onBy(), common);
        } else {
            direction = Vector3D.of(0, 0, sign);
            SharedPoint place = SharedPoint.of(a.footprint(), b.footprint(), plan);
            onA = Vector3D.of(place.x(), place.y(), faceA);
            onB = Vector3D.of(place.x(), place.y(), faceB);
        }
        return new Gap(
                lowerMm(),
                upperMm(),
                onA.add(direction.multiply(a.roundMm())),
                onB.subtract(direction.multiply(b.roundMm())),
                direction,
                0,
                0);
    }
}
