package org.spile.geometry.kernel.clearance;

/**
 * How low the reach of a convex set can be over a triangle of directions, from the set's farthest points s₁ s₂ s₃ along
 * the triangle's corners n₁ n₂ n₃.
 *
 * <p>Any mixture s of the three lies in the set, so its reach is nowhere below s·n; and over the triangle s·n is nowhere
 * below the least of s·n₁, s·n₂, s·n₃ (if that is not negative: n is a combination of the corners whose weights add up
 * to 1 or more). The best mixture is that of a game of three rows and columns (von Neumann 1928): one that makes all
 * three columns equal if it has no negative weight, else a mixture of two rows or one row.
 */
final class TriangleFloor {
    /** Row by row: farthest point k along corner i. */
    private final double[] along = new double[9];

    double of(double[] corners, int at, int stride) {
        for (int k = 0; k < 3; k++) {
            int s = at + stride * k + 3;
            for (int i = 0; i < 3; i++) {
                int n = at + stride * i;
                along[3 * k + i] =
                        corners[s] * corners[n] + corners[s + 1] * corners[n + 1] + corners[s + 2] * corners[n + 2];
            }
        }
        double equal = equalised();
        if (equal > 0) {
            return equal;
        }
        double best = 0;
        for (int k = 0; k < 3; k++) {
            best = Math.max(best, ofPair(3 * k, 3 * ((k + 1) % 3)));
        }
        return best;
    }

    /** The value of the mixture that makes all columns equal, 0 if a weight would be negative. */
    private double equalised() {
        double[] m = along;
        double w1 = ofOnes(3, 6);
        double w2 = ofOnes(6, 0);
        double w3 = ofOnes(0, 3);
        double determinant = m[0] * (m[4] * m[8] - m[5] * m[7])
                + m[1] * (m[5] * m[6] - m[3] * m[8])
                + m[2] * (m[3] * m[7] - m[4] * m[6]);
        boolean positive = w1 >= 0 && w2 >= 0 && w3 >= 0 && determinant > 0;
        boolean negative = w1 <= 0 && w2 <= 0 && w3 <= 0 && determinant < 0;
        double sum = w1 + w2 + w3;
        if (!(positive || negative) || sum == 0) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            least = Math.min(least, (w1 * m[i] + w2 * m[3 + i] + w3 * m[6 + i]) / sum);
        }
        return least;
    }

    /** The determinant of a row of ones and two rows. */
    private double ofOnes(int p, int q) {
        double[] m = along;
        return m[p + 1] * m[q + 2]
                - m[p + 2] * m[q + 1]
                + m[p + 2] * m[q]
                - m[p] * m[q + 2]
                + m[p] * m[q + 1]
                - m[p + 1] * m[q];
    }

    private double ofPair(int p, int q) {
        double best = Math.max(ofMixture(p, q, 0), ofMixture(p, q, 1));
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            double here = along[p + i] - along[p + j];
            double there = along[q + i] - along[q + j];
            if (here * there < 0) {
                best = Math.max(best, ofMixture(p, q, here / (here - there)));
            }
        }
        return best;
    }

    private double ofMixture(int p, int q, double t) {
        double first = along[p] + t * (along[q] - along[p]);
        double second = along[p + 1] + t * (along[q + 1] - along[p + 1]);
        double third = along[p + 2] + t * (along[q + 2] - along[p + 2]);
        return Math.min(first, Math.min(second, third));
    }
}
