package org.spile.analysis.duct;

import org.spile.analysis.finding.Reckoning;

/**
 * The air in a duct: what friction needs to know of it.
 *
 * <p>At the pressures of a house it doesn't compress: one state holds for a whole duct.
 *
 * @param densityKgM3 density (kg/m3)
 * @param viscosityPaS dynamic viscosity (Pa s)
 */
public record Air(double densityKgM3, double viscosityPaS) {
    /** The temperature taken where nobody says one (K): 20 degC. */
    public static final double USUAL_K = 293.15;

    /** The relative humidity taken where nobody says one. */
    public static final double USUAL_HUMIDITY = 0.5;

    /**
     * Refuses what can't be air.
     *
     * @throws IllegalArgumentException if either is not finite and more than nothing
     */
    public Air {
        if (!(densityKgM3 > 0 && viscosityPaS > 0) || !Double.isFinite(densityKgM3 + viscosityPaS)) {
            throw new IllegalArgumentException(
                    "air needs a density and a viscosity, not " + densityKgM3 + " and " + viscosityPaS);
        }
    }

    /**
     * The air at a place.
     *
     * @param tempK temperature (K), inside the range of {@link SaturationPressure}
     * @param humidity relative, as a ratio: 50 % is 0.5
     * @param altitudeM above the sea (m), inside the range of {@link StandardAtmosphere}
     */
    public static Reckoning<Air> at(double tempK, double humidity, double altitudeM) {
        return StandardAtmosphere.pressurePa(altitudeM)
                .then(pressurePa -> MoistAirDensity.kgM3(tempK, humidity, pressurePa))
                .then(density -> SutherlandViscosity.paS(tempK).map(viscosity -> new Air(density, viscosity)));
    }

    /** The air of a house whose file says no more than how high it stands: 20 degC at 50 %. */
    public static Reckoning<Air> usual(double altitudeM) {
        return at(USUAL_K, USUAL_HUMIDITY, altitudeM);
    }

    /** Kinematic viscosity (m2/s). */
    public double kinematicM2S() {
        return viscosityPaS / densityKgM3;
    }
}
