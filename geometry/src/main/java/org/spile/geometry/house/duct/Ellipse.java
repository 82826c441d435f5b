package org.spile.geometry.house.duct;

/** An ellipse's perimeter, which has no closed form. */
final class Ellipse {
    private static final int STEPS = 60;

    private Ellipse() {}

    /**
     * Perimeter by the arithmetic-geometric mean, to rounding.
     *
     * @param a one half axis, not negative
     * @param b the other, not both nothing
     * @see <a href="https://dlmf.nist.gov/19.8.E6">DLMF 19.8.6: E(k) by the mean of Gauss</a>
     */
    static double perimeter(double a, double b) {
        double x = Math.max(a, b);
        double y = Math.min(a, b);
        if (y <= 0) {
            return 4 * x;
        }
        double sum = x * x - (x * x - y * y) / 2;
        double power = 1;
        for (int i = 0; i < STEPS && Math.abs(x - y) > 1e-15 * x; i++) {
            double c = (x - y) / 2;
            double mean = (x + y) / 2;
            y = Math.sqrt(x * y);
            x = mean;
            sum -= power * c * c;
            power *= 2;
        }
        return 2 * Math.PI * sum / x;
    }
}
