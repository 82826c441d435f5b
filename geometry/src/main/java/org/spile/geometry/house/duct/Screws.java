package org.spile.geometry.house.duct;

/**
 * The screws of each joint of a run, whose tips stand into it.
 *
 * @param tipMm how far each stands in; 0 for none
 * @param thickMm diameter of each
 * @param pitchMm how far apart they are round the joint, at most
 */
public record Screws(double tipMm, double thickMm, double pitchMm) {
    /** No screws. */
    public static final Screws NONE = new Screws(0, 0, 1);

    /** Refuses less than nothing, and screws without a pitch. */
    public Screws {
        if (!(tipMm >= 0) || !(thickMm >= 0) || !(pitchMm > 0)) {
            throw new IllegalArgumentException(
                    "screws: tip " + tipMm + ", thick " + thickMm + ", pitch " + pitchMm + " mm");
        }
    }

    boolean none() {
        return tipMm == 0 || thickMm == 0;
    }

    /** How many a joint of that perimeter has; three at least. */
    public int count(double perimeterMm) {
        return Math.max(3, (int) Math.ceil(perimeterMm / pitchMm - 1e-9));
    }

    /** How much of a joint of that perimeter they cover (mm2). */
    public double coveredMm2(double perimeterMm) {
        return none() ? 0 : count(perimeterMm) * tipMm * thickMm;
    }
}
