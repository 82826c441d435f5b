package org.spile.geometry.kernel.clearance;

import org.spile.geometry.kernel.solid.ConvexCore;
import org.spile.geometry.kernel.solid.ConvexPolyhedron;
import org.spile.geometry.kernel.solid.Move;

/** Holds travels at which boxes come too near against distances by all features. */
final class TravelCheck {
    /** A skew direction of length 1: 2/7, 3/7, 6/7. */
    static final double X = 2.0 / 7;

    static final double Y = 3.0 / 7;
    static final double Z = 6.0 / 7;

    private static final double BAND_MM = 1e-5;
    private static final double FAR_MM = 2_500;
    private static final double STEP_MM = 50;

    private TravelCheck() {}

    /** At the interval's ends the margin is just met, inside it is not, elsewhere it is. */
    static void hold(BoxPairs pairs, ConvexCore[][] cores, double marginMm) {
        BruteForce plain = new BruteForce();
        TravelContact contact = new TravelContact();
        int met = 0;
        for (int i = 0; i < cores.length; i++) {
            ConvexPolyhedron a = pairs.first.get(i).plain();
            ConvexPolyhedron b = pairs.second.get(i).plain();
            boolean found = contact.find(cores[i][0], cores[i][1], X, Y, Z, marginMm);
            if (found) {
                met++;
                within(i, signed(plain, a, contact.from, b) - marginMm, -BAND_MM, BAND_MM);
                within(i, signed(plain, a, contact.to, b) - marginMm, -BAND_MM, BAND_MM);
                double middle = signed(plain, a, (contact.from + contact.to) / 2, b);
                within(i, middle - marginMm, Double.NEGATIVE_INFINITY, BAND_MM);
            }
            for (double t = -FAR_MM; i % 10 == 0 && t <= FAR_MM; t += STEP_MM) {
                if (!found || t < contact.from || t > contact.to) {
                    within(i, signed(plain, a, t, b) - marginMm, -BAND_MM, Double.POSITIVE_INFINITY);
                }
            }
        }
        if (met < cores.length / 20) {
            throw new IllegalStateException("only " + met + " pairs meet on their way");
        }
    }

    private static double signed(BruteForce plain, ConvexPolyhedron a, double travelMm, ConvexPolyhedron b) {
        return plain.signedDistance(a.moved(Move.shift(X * travelMm, Y * travelMm, Z * travelMm)), b);
    }

    private static void within(int pair, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalStateException(
                    "pair " + pair + ": " + value + " mm past the margin, not in " + least + " to " + most);
        }
    }
}
