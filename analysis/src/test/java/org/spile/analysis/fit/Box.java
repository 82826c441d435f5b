package org.spile.analysis.fit;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.kernel.measure.Stack;
import org.spile.geometry.kernel.solid.Body;
import org.spile.geometry.kernel.solid.Prism;

/** A box whose six faces are sums of readings; a point between two faces takes its share of each. */
record Box(Stack rear, Stack front, Stack right, Stack left, Stack bottom, Stack top) {

    /** A box whose plan is exact. */
    static Box upright(double rear, double front, double right, double left, Stack bottom, Stack top) {
        return new Box(
                Stack.constant(rear), Stack.constant(front), Stack.constant(right), Stack.constant(left), bottom, top);
    }

    Part part(PartKind kind, String id, String space) {
        Body body = Body.of(Prism.box(
                rear.valueMm(), right.valueMm(), bottom.valueMm(), front.valueMm(), left.valueMm(), top.valueMm()));
        String[] keys = id.split("\\.", -1);
        boolean lining = kind == PartKind.LINING;
        String title = lining ? keys[2] + " of " + keys[1] : keys[keys.length - 1];
        return new Part(
                id,
                keys[0] + "." + keys[1],
                kind,
                title,
                space.isEmpty() ? List.of() : List.of(space.split(" ", -1)),
                "bunk",
                body,
                this::along);
    }

    private Stack along(Vector3D point, Vector3D direction) {
        return share(rear, front, point.getX())
                .times(direction.getX())
                .plus(share(right, left, point.getY()).times(direction.getY()))
                .plus(share(bottom, top, point.getZ()).times(direction.getZ()));
    }

    private static Stack share(Stack low, Stack high, double at) {
        double up = (at - low.valueMm()) / (high.valueMm() - low.valueMm());
        return low.times(1 - up).plus(high.times(up));
    }
}
