package org.spile.analysis.duct;

import org.spile.geometry.house.duct.Section;

/** The hydraulic diameter: four times the clear area over the wetted perimeter; a circle's is its own diameter. */
public final class HydraulicDiameter {
    /** Where the formula comes from. */
    public static final String SOURCE = "definition, as in any handbook of hydraulics";

    private HydraulicDiameter() {}

    /** Of a section (mm). */
    public static double mm(Section section) {
        return mm(section.areaMm2(), section.perimeterMm());
    }

    /**
     * Of any shape (mm).
     *
     * @param areaMm2 clear area (mm2)
     * @param perimeterMm wetted perimeter (mm)
     */
    public static double mm(double areaMm2, double perimeterMm) {
        return 4 * areaMm2 / perimeterMm;
    }
}
