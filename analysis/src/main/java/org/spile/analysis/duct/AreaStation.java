package org.spile.analysis.duct;

/**
 * The clear section at a place along a run, square to the path.
 *
 * @param atMm station: along the run's middle line, corner to corner, from its start (mm)
 * @param areaMm2 clear area, with what stands into it taken off
 * @param perimeterMm wetted perimeter of the section, vanes and screws left out
 * @param wideMm clear level side; across, on an upright leg
 * @param highMm clear upright side; fore and aft, on an upright leg
 */
public record AreaStation(double atMm, double areaMm2, double perimeterMm, double wideMm, double highMm) {
    /** Hydraulic diameter (mm): four times the area over the perimeter. */
    public double hydraulicMm() {
        return HydraulicDiameter.mm(areaMm2, perimeterMm);
    }

    /** Longer side over the shorter; 1 or more. */
    public double aspect() {
        return Math.max(wideMm, highMm) / Math.min(wideMm, highMm);
    }
}
