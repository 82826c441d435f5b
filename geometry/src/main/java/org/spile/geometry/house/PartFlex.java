package org.spile.geometry.house;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.geometry.house.spot.FirstOrder;
import org.spile.geometry.house.spot.Give;
import org.spile.geometry.kernel.measure.Stack;

/** A part's flex: the spot at a point, along a direction. */
record PartFlex(Give give) implements Flex {
    @Override
    public Stack along(Vector3D point, Vector3D direction) {
        return FirstOrder.exactly(point.dot(direction), give.at(point).dot(direction));
    }
}
