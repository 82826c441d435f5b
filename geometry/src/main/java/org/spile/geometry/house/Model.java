package org.spile.geometry.house;

import java.util.List;
import java.util.Map;
import org.spile.geometry.house.duct.DuctRun;
import org.spile.geometry.house.spot.Spot;

/**
 * Everything worked out before it is put in scenes: pieces in their trailers' frames, and what ties them.
 *
 * @param spaces trailers, rooms and cavities
 * @param decks of the trailers, by id
 * @param docking where trailers stand
 * @param movers by id
 * @param units those that have their own place, in the order of the file
 * @param openings of units and terminals, in the order of the file
 * @param pieces in the order of the file
 * @param sways how far things shift on the road, by their paths
 * @param ways runs and lines, in the order of the file
 */
record Model(
        Spaces spaces,
        Map<String, Travels.Deck> decks,
        Docking docking,
        Stances stances,
        Map<String, MoverPlace> movers,
        List<UnitPlace> units,
        List<Opening> openings,
        List<Piece> pieces,
        List<Pathway> ways,
        List<DuctRun> runs,
        List<MassPoint> masses,
        Ties ties,
        Map<String, Spot> sways) {}
