package org.spile.geometry.house;

import org.spile.geometry.house.spot.Rigid;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A mover, or a leaf that moves, in its place.
 *
 * @param id as stances name it
 * @param path where it is told
 * @param stood where it is placed, shut
 * @param motion how it moves
 * @param rides id of the mover that carries it; empty if none
 */
record MoverPlace(String id, String path, Stood stood, Motion motion, String rides) {
    /** The motion to a position, in the trailer's frame. */
    Rigid to(Stack position) {
        Rigid own = motion.to(position);
        Rigid turn = stood.turn();
        return turn.isNone() ? own : turn.inverse().then(own).then(turn);
    }
}
