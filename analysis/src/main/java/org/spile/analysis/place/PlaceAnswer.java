package org.spile.analysis.place;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Where a unit could go.
 *
 * @param unit its path
 * @param title what people call it
 * @param trailer whose frame the places are in
 * @param in path of what it is in
 * @param now the middle of its box where the file puts it
 * @param nowYawDeg how it is turned there
 * @param fitsNow whether that is one of the places
 * @param leftOut the paths of what goes with the unit and would have to be made anew
 * @param stances in all of which the places hold
 * @param maps one for each yaw asked
 * @param notKnown why the question can't be answered, if it can't; then there are no maps
 * @param empty why there is no place, if there is none
 * @param growth how the places grow as the ceiling under the unit is lowered further
 */
public record PlaceAnswer(
        String unit,
        String title,
        String trailer,
        String in,
        Vector3D now,
        double nowYawDeg,
        boolean fitsNow,
        List<String> leftOut,
        List<String> stances,
        List<PlaceMap> maps,
        Optional<String> notKnown,
        Optional<NoPlace> empty,
        Optional<Growth> growth) {
    /** Copies the lists. */
    public PlaceAnswer {
        leftOut = List.copyOf(leftOut);
        stances = List.copyOf(stances);
        maps = List.copyOf(maps);
    }

    /** Whether there is a place at all. */
    public boolean fits() {
        return maps.stream().anyMatch(map -> !map.free().isEmpty());
    }
}
