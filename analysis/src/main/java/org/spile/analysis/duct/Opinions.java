package org.spile.analysis.duct;

import java.util.List;
import org.spile.geometry.house.duct.Section;

/**
 * What the published methods make of a section: the bore we go by, and the others that are heard where the section is so
 * flat that no test decides between them.
 *
 * <p>A circle is a circle. For a rectangle it is method J. For a flat oval it is the same idea, with the oval's own
 * {@linkplain FlatOvalLaminar laminar friction} in the factor; as nobody tested that, D and H are always heard. Both are for
 * turbulent flow.
 *
 * @param best the one we go by
 * @param others the rest
 * @param scatter how far the best scatters in tests, as a share of the loss
 */
record Opinions(Bore best, List<Bore> others, double scatter) {
    private static final double MM = 1e-3;
    private static final double CIRCLE = 64;

    Opinions {
        others = List.copyOf(others);
    }

    static Opinions on(Section section) {
        if (section instanceof Section.Round round) {
            Bore bore = Bore.round(round.diameterMm() * MM);
            return new Opinions(bore, List.of(), 0);
        }
        if (section instanceof Section.FlatOval oval) {
            return oval(oval);
        }
        return rectangle(section);
    }

    private static Opinions rectangle(Section section) {
        double aspect = Aspect.of(section);
        Bore jones = bore(section, JonesFactor.at(1 / aspect));
        List<Bore> others = aspect <= HuebscherEquivalent.MOST_ASPECT
                ? List.of()
                : List.of(
                        bore(section, 1),
                        Bore.round(HuebscherEquivalent.beyondTestsMm(section.wideMm(), section.highMm()) * MM));
        return new Opinions(jones, others, JonesFactor.SCATTER);
    }

    private static Opinions oval(Section.FlatOval oval) {
        if (Aspect.of(oval) == 1) {
            return on(new Section.Round(oval.wideMm()));
        }
        Bore ours = bore(oval, CIRCLE / FlatOvalLaminar.at(1 / Aspect.of(oval)));
        Bore handbook = Bore.round(HeytDiazEquivalent.beyondTestsMm(oval) * MM);
        return new Opinions(ours, List.of(bore(oval, 1), handbook), JonesFactor.SCATTER);
    }

    private static Bore bore(Section section, double reynoldsFactor) {
        return new Bore(HydraulicDiameter.mm(section) * MM, section.areaMm2() * MM * MM, reynoldsFactor);
    }

    /** The least diameter among them (m): the one that feels the roughness most. */
    double leastDiameterM() {
        return others.stream().mapToDouble(Bore::diameterM).reduce(best.diameterM(), Math::min);
    }
}
