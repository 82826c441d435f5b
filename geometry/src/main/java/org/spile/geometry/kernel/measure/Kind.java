package org.spile.geometry.kernel.measure;

import java.util.List;

/**
 * A kind of quantity: the unit its numbers are kept in and the range inside which a house can possibly lie.
 *
 * <p>Lengths, movements (how far a thing sags, swells or sways in use) and areas are kept in millimetres, heights above the sea in metres, angles in degrees, slopes and ratios as plain ratios, everything else
 * in SI units. The range is a guard against slips (a misplaced unit, a stuck key), not a design limit: its ends are our
 * own choice, no source.
 */
public enum Kind {
    LENGTH("a length", "mm", -100_000, 100_000, "208", "mm", "cm", "in"),
    MOVEMENT("a movement", "mm", -1000, 1000, "3", "mm"),
    ALTITUDE("an altitude", "m", -500, 9000, "300", "m", "ft"),
    ANGLE("an angle", "deg", -360, 360, "40", "deg"),
    FLOW("a flow", "m3/s", -100, 100, "40", "L/s", "m3/h", "cfm"),
    PRESSURE("a pressure", "Pa", -1e6, 1e6, "30", "Pa", "mmH2O", "inH2O"),
    MASS("a mass", "kg", -1e5, 1e5, "45", "kg", "lb"),
    TEMPERATURE("a temperature", "K", 150, 1500, "12", "degC", "degF"),
    WARMING("a change of temperature", "K", 0, 300, "40", "K"),
    STIFFNESS("a stiffness", "Pa", 1e6, 1e12, "11000", "MPa", "GPa"),
    EXPANSION("a growth with heat", "1/K", 0, 0.001, "23", "um/mK"),
    POWER("a power", "W", -1e6, 1e6, "350", "W", "kW", "BTU/h"),
    SPEED("a speed", "m/s", -200, 200, "2", "m/s", "km/h", "ft/min"),
    RATIO("a share", "", 0, 1, "70", "%"),
    CONDUCTIVITY("a conductivity", "W/mK", 0, 1000, "0.036", "W/mK"),
    TRANSMITTANCE("a heat transmittance", "W/m2K", 0, 1000, "1.2", "W/m2K"),
    DENSITY("a density", "kg/m3", 0, 30_000, "60", "kg/m3", "lb/ft3"),
    MASS_RATE("a mass rate", "kg/s", -100, 100, "2.6", "kg/h", "g/h", "lb/h"),
    AREA("an area", "mm2", 0, 1e10, "60", "cm2", "m2", "in2"),
    VOLUME("a volume", "m3", 0, 1e6, "80", "L", "m3"),
    SLOPE("a slope", "", -1, 1, "2", "%", "mm/m", "in/ft"),
    FORCE("a force", "N", -1e7, 1e7, "900", "N", "kN", "lbf"),
    SOUND("a sound level", "dB", -50, 200, "35", "dB"),
    DURATION("a time", "s", 0, 1e9, "10", "s", "min", "h"),
    NUMBER("a number", "", -1e12, 1e12, "7000"),
    COUNT("a count", "", 0, 1e6, "2");

    private final String phrase;
    private final String baseSymbol;
    private final double leastBase;
    private final double mostBase;
    private final String sample;
    private final String usualSymbols;

    Kind(String phrase, String baseSymbol, double leastBase, double mostBase, String sample, String... usualSymbols) {
        this.phrase = phrase;
        this.baseSymbol = baseSymbol;
        this.leastBase = leastBase;
        this.mostBase = mostBase;
        this.sample = sample;
        this.usualSymbols = String.join("|", usualSymbols);
    }

    /** The kind in a sentence, with its article: {@code a flow}. */
    public String phrase() {
        return phrase;
    }

    /** The unit that values of this kind are kept in, as written; empty for plain numbers. */
    public String baseSymbol() {
        return baseSymbol;
    }

    /** Every unit this kind may be written in, the usual ones not set apart. */
    public List<Unit> units() {
        return Unit.of(this);
    }

    /** Whether a number of this kind may stand without a unit. */
    public boolean bareAllowed() {
        return this == LENGTH || this == NUMBER || this == COUNT || this == RATIO;
    }

    /** The least value a house can possibly hold, in the base unit. */
    public double leastBase() {
        return leastBase;
    }

    /** The greatest value a house can possibly hold, in the base unit. */
    public double mostBase() {
        return mostBase;
    }

    /** How a number of this kind is written, as a sentence: {@code A flow is 40 L/s, 40 m3/h or 40 cfm.} */
    public String form() {
        return form(sample);
    }

    /** As {@link #form()}, with the digits somebody wrote in place of the sample's. */
    public String form(String digits) {
        String start = Character.toUpperCase(phrase.charAt(0)) + phrase.substring(1) + " is ";
        return switch (this) {
            case LENGTH -> start + digits + ", " + digits + " mm, " + digits + " in or 6 ft 2 in.";
            case NUMBER, COUNT -> start + "written plainly: " + digits + ".";
            case SLOPE -> start + digits + " %, " + digits + " mm/m or 1:50.";
            case MOVEMENT,
                    WARMING,
                    STIFFNESS,
                    EXPANSION,
                    ALTITUDE,
                    ANGLE,
                    FLOW,
                    PRESSURE,
                    MASS,
                    TEMPERATURE,
                    POWER,
                    SPEED,
                    RATIO,
                    CONDUCTIVITY,
                    TRANSMITTANCE -> start + listed(digits) + ".";
            case DENSITY, MASS_RATE, AREA, VOLUME, FORCE, SOUND, DURATION -> start + listed(digits) + ".";
        };
    }

    private String listed(String digits) {
        List<String> symbols = List.of(usualSymbols.split("\\|"));
        var text = new StringBuilder();
        for (int i = 0; i < symbols.size(); i++) {
            String between = i == 0 ? "" : i == symbols.size() - 1 ? " or " : ", ";
            text.append(between).append(digits).append(' ').append(symbols.get(i));
        }
        return text.toString();
    }
}
