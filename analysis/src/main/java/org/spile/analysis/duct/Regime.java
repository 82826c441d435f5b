package org.spile.analysis.duct;

/** How the air flows, by the Reynolds number at which friction is taken. */
public enum Regime {
    /** In layers. */
    LAMINAR("laminar"),
    /** Now so, now so: nobody can say what it loses, not even within a third. */
    TRANSITIONAL("in the transition between laminar and turbulent, give or take 30 %"),
    /** Mixed through. */
    TURBULENT("turbulent");

    private final String words;

    Regime(String words) {
        this.words = words;
    }

    /** In a sentence, behind "the flow is". */
    public String words() {
        return words;
    }

    /** At a Reynolds number. */
    public static Regime at(double reynolds) {
        if (reynolds <= LaminarFriction.MOST_REYNOLDS) {
            return LAMINAR;
        }
        return reynolds < ColebrookFriction.LEAST_REYNOLDS ? TRANSITIONAL : TURBULENT;
    }
}
