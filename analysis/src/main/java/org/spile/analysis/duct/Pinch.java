package org.spile.analysis.duct;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A stretch of a run that passes less than what lies on either side of it.
 *
 * @param path station that gives the run the section it has there, as {@code runs.toilet-flat.path[4]}: the place to change it
 * @param leg station of the leg in which it lies
 * @param trailer id of the trailer whose frame {@code at} is in
 * @param fromMm station where it begins
 * @param toMm station where it ends; the same for a bare point
 * @param alongLegMm how far along that leg's middle line its middle lies
 * @param at its middle, on the run's middle line
 * @param areaMm2 least clear area, square to the path
 * @param perimeterMm wetted perimeter there
 * @param wideMm clear level side; across, on an upright leg
 * @param highMm clear upright side; fore and aft, on an upright leg
 * @param by what pinches it, in plain words: {@code its 240 mm width} or {@code 4 vanes}
 * @param least whether it is the run's least
 */
public record Pinch(
        String path,
        String leg,
        String trailer,
        double fromMm,
        double toMm,
        double alongLegMm,
        Vector3D at,
        double areaMm2,
        double perimeterMm,
        double wideMm,
        double highMm,
        String by,
        boolean least) {
    /** Station of its middle (mm). */
    public double middleMm() {
        return (fromMm + toMm) / 2;
    }

    /** Hydraulic diameter there (mm). */
    public double hydraulicMm() {
        return HydraulicDiameter.mm(areaMm2, perimeterMm);
    }
}
