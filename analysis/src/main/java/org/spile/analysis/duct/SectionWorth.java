package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;
import org.spile.geometry.house.duct.Section;

/**
 * What can be said of a section before anything flows.
 *
 * @param section it
 * @param areaMm2 clear area (mm2)
 * @param hydraulicMm hydraulic diameter (mm)
 * @param aspect long side over short one
 * @param equalAreaMm diameter of the round duct of the same area (mm)
 * @param handbookMm diameter of the handbooks' round equivalent (mm)
 */
public record SectionWorth(
        Section section,
        double areaMm2,
        double hydraulicMm,
        double aspect,
        double equalAreaMm,
        Reckoning<Double> handbookMm) {

    /** Of a section. */
    public static SectionWorth of(Section section) {
        return new SectionWorth(
                section,
                section.areaMm2(),
                HydraulicDiameter.mm(section),
                Aspect.of(section),
                EqualArea.roundMm(section.areaMm2()),
                handbook(section));
    }

    private static Reckoning<Double> handbook(Section section) {
        if (section instanceof Section.Round round) {
            return Reckoning.of(round.diameterMm());
        }
        return section instanceof Section.FlatOval oval
                ? HeytDiazEquivalent.mm(oval)
                : HuebscherEquivalent.mm(section.wideMm(), section.highMm());
    }
}
