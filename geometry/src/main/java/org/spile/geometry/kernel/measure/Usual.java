package org.spile.geometry.kernel.measure;

/**
 * The range in which a length of some sort mostly lies; outside it a bare number is questioned, never guessed.
 *
 * @param leastMm the least usual, in mm
 * @param mostMm the most usual, in mm
 */
public record Usual(double leastMm, double mostMm) {

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException unless the least is above 0 and below the most
     */
    public Usual {
        if (!(leastMm > 0 && leastMm < mostMm)) {
            throw new IllegalArgumentException("usual lengths go from more than 0 up: " + leastMm + ".." + mostMm);
        }
    }

    boolean holds(double mm) {
        return Math.abs(mm) >= leastMm && Math.abs(mm) <= mostMm;
    }
}
