package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.kernel.measure.Written;

/** How many equal small round ducts, each with its share of the flow, carry like one big duct. */
public final class SmallRounds {
    /** No more than so many; our own bound. */
    public static final int MOST = 1000;

    private SmallRounds() {}

    /**
     * The least number that loses no more per metre than the big duct, turbulent friction in all of them.
     *
     * @param big the one they stand for; their roughness and air are its own
     * @param smallMm diameter of each (mm)
     * @param flowM3s of them all, inside the range of {@link StraightDuct#at}
     */
    public static Reckoning<Integer> count(StraightDuct big, double smallMm, double flowM3s) {
        return big.at(flowM3s)
                .then(loss -> StraightDuct.of(new Section.Round(smallMm), big.roughMm(), big.air()))
                .then(small -> {
                    // A round of the same size is one, whatever the last digit says.
                    double mostPa = big.sizingPaPerM(flowM3s) * (1 + 1e-12);
                    for (int n = 1; n <= MOST; n++) {
                        if (small.sizingPaPerM(flowM3s / n) <= mostPa) {
                            return Reckoning.of(n);
                        }
                    }
                    return Reckoning.none("More than " + MOST + " round ducts of " + Written.number(smallMm, 1)
                            + " mm would be needed.");
                });
    }
}
