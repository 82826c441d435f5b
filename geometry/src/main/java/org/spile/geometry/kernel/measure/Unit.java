package org.spile.geometry.kernel.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;

/**
 * A unit that people write, and its exact relation to the base unit of its {@link Kind}.
 *
 * <p>The value in the base unit is (written number + offset) x numerator / denominator. The relations are those of NIST
 * Special Publication 811 (2008), appendix B: inch 25.4 mm, foot 0.3048 m, pound 0.453 592 37 kg, the conventional
 * millimetre and inch of water 9.806 65 Pa and 249.088 91 Pa, the international-table BTU 1055.055 852 62 J, degree
 * Fahrenheit t/degC = (t/degF - 32) / 1.8; the rest are SI prefixes (ISO 80000-1) and minutes and hours. All are exact,
 * so that {@code 5/8 in} is 15.875 mm and not a hair beside it.
 */
public enum Unit {
    MILLIMETRE(Kind.LENGTH, "1", "1", "mm"),
    CENTIMETRE(Kind.LENGTH, "10", "1", "cm"),
    METRE(Kind.LENGTH, "1000", "1", "m", "metre", "metres", "meter", "meters"),
    INCH(Kind.LENGTH, "25.4", "1", "in", "\"", "inch", "inches"),
    FOOT(Kind.LENGTH, "304.8", "1", "ft", "'", "foot", "feet"),
    METRE_ABOVE_SEA(Kind.ALTITUDE, "1", "1", "m", "metre", "metres", "meter", "meters"),
    FOOT_ABOVE_SEA(Kind.ALTITUDE, "0.3048", "1", "ft", "foot", "feet"),
    DEGREE(Kind.ANGLE, "1", "1", "deg", "°", "degree", "degrees"),
    CUBIC_METRE_PER_SECOND(Kind.FLOW, "1", "1", "m3/s"),
    LITRE_PER_SECOND(Kind.FLOW, "0.001", "1", "L/s", "l/s"),
    LITRE_PER_MINUTE(Kind.FLOW, "0.001", "60", "L/min", "l/min"),
    CUBIC_METRE_PER_MINUTE(Kind.FLOW, "1", "60", "m3/min"),
    CUBIC_METRE_PER_HOUR(Kind.FLOW, "1", "3600", "m3/h"),
    CUBIC_FOOT_PER_MINUTE(Kind.FLOW, "0.028316846592", "60", "cfm", "ft3/min"),
    PASCAL(Kind.PRESSURE, "1", "1", "Pa"),
    KILOPASCAL(Kind.PRESSURE, "1000", "1", "kPa"),
    HECTOPASCAL(Kind.PRESSURE, "100", "1", "hPa"),
    MILLIBAR(Kind.PRESSURE, "100", "1", "mbar"),
    MILLIMETRE_OF_WATER(Kind.PRESSURE, "9.80665", "1", "mmH2O"),
    INCH_OF_WATER(Kind.PRESSURE, "249.08891", "1", "inH2O", "in.wg", "inWG"),
    KILOGRAM(Kind.MASS, "1", "1", "kg"),
    GRAM(Kind.MASS, "0.001", "1", "g"),
    TONNE(Kind.MASS, "1000", "1", "t"),
    POUND(Kind.MASS, "0.45359237", "1", "lb", "lbs"),
    OUNCE(Kind.MASS, "0.45359237", "16", "oz"),
    KELVIN(Kind.TEMPERATURE, "1", "1", "K"),
    CELSIUS(Kind.TEMPERATURE, "1", "1", new BigDecimal("273.15"), "degC", "°C"),
    FAHRENHEIT(Kind.TEMPERATURE, "5", "9", new BigDecimal("459.67"), "degF", "°F"),
    KELVIN_MORE(Kind.WARMING, "1", "1", "K"),
    MEGAPASCAL(Kind.STIFFNESS, "1000000", "1", "MPa", "N/mm2"),
    GIGAPASCAL(Kind.STIFFNESS, "1000000000", "1", "GPa"),
    MICROMETRE_PER_METRE_KELVIN(Kind.EXPANSION, "1", "1000000", "um/mK", "um/(mK)"),
    WATT(Kind.POWER, "1", "1", "W"),
    KILOWATT(Kind.POWER, "1000", "1", "kW"),
    BTU_PER_HOUR(Kind.POWER, "1055.05585262", "3600", "BTU/h", "BTU/hr"),
    METRE_PER_SECOND(Kind.SPEED, "1", "1", "m/s"),
    KILOMETRE_PER_HOUR(Kind.SPEED, "1000", "3600", "km/h"),
    FOOT_PER_MINUTE(Kind.SPEED, "0.3048", "60", "ft/min", "fpm"),
    MILE_PER_HOUR(Kind.SPEED, "0.44704", "1", "mph"),
    PERCENT(Kind.RATIO, "1", "100", "%"),
    ONE(Kind.RATIO, "1", "1", ""),
    WATT_PER_METRE_KELVIN(Kind.CONDUCTIVITY, "1", "1", "W/mK", "W/(mK)", "W/(m K)", "W/m.K"),
    WATT_PER_SQUARE_METRE_KELVIN(Kind.TRANSMITTANCE, "1", "1", "W/m2K", "W/(m2K)", "W/(m2 K)", "W/m2.K"),
    KILOGRAM_PER_CUBIC_METRE(Kind.DENSITY, "1", "1", "kg/m3"),
    GRAM_PER_CUBIC_CENTIMETRE(Kind.DENSITY, "1000", "1", "g/cm3"),
    POUND_PER_CUBIC_FOOT(Kind.DENSITY, "0.45359237", "0.028316846592", "lb/ft3"),
    KILOGRAM_PER_SECOND(Kind.MASS_RATE, "1", "1", "kg/s"),
    KILOGRAM_PER_HOUR(Kind.MASS_RATE, "1", "3600", "kg/h"),
    KILOGRAM_PER_DAY(Kind.MASS_RATE, "1", "86400", "kg/day"),
    GRAM_PER_HOUR(Kind.MASS_RATE, "0.001", "3600", "g/h"),
    GRAM_PER_SECOND(Kind.MASS_RATE, "0.001", "1", "g/s"),
    POUND_PER_HOUR(Kind.MASS_RATE, "0.45359237", "3600", "lb/h"),
    SQUARE_MILLIMETRE(Kind.AREA, "1", "1", "mm2"),
    SQUARE_CENTIMETRE(Kind.AREA, "100", "1", "cm2"),
    SQUARE_METRE(Kind.AREA, "1000000", "1", "m2"),
    SQUARE_INCH(Kind.AREA, "645.16", "1", "in2"),
    SQUARE_FOOT(Kind.AREA, "92903.04", "1", "ft2"),
    CUBIC_METRE(Kind.VOLUME, "1", "1", "m3"),
    LITRE(Kind.VOLUME, "0.001", "1", "L", "l"),
    SLOPE_PERCENT(Kind.SLOPE, "1", "100", "%"),
    MILLIMETRE_PER_METRE(Kind.SLOPE, "1", "1000", "mm/m"),
    INCH_PER_FOOT(Kind.SLOPE, "1", "12", "in/ft"),
    NEWTON(Kind.FORCE, "1", "1", "N"),
    KILONEWTON(Kind.FORCE, "1000", "1", "kN"),
    POUND_FORCE(Kind.FORCE, "4.4482216152605", "1", "lbf"),
    DECIBEL(Kind.SOUND, "1", "1", "dB", "dB(A)", "dBA"),
    SECOND(Kind.DURATION, "1", "1", "s"),
    MINUTE(Kind.DURATION, "60", "1", "min"),
    HOUR(Kind.DURATION, "3600", "1", "h"),
    NUMBER(Kind.NUMBER, "1", "1", ""),
    COUNT(Kind.COUNT, "1", "1", "");

    private final Kind kind;
    private final BigDecimal numerator;
    private final BigDecimal denominator;
    private final BigDecimal offset;
    private final String spellings;

    Unit(Kind kind, String numerator, String denominator, String... spellings) {
        this(kind, numerator, denominator, BigDecimal.ZERO, spellings);
    }

    Unit(Kind kind, String numerator, String denominator, BigDecimal offset, String... spellings) {
        this.kind = kind;
        this.numerator = new BigDecimal(numerator);
        this.denominator = new BigDecimal(denominator);
        this.offset = offset;
        this.spellings = String.join("|", spellings);
    }

    /** The kind of quantity this unit measures. */
    public Kind kind() {
        return kind;
    }

    /** The unit as we write it: {@code L/s}; empty for plain numbers. */
    public String symbol() {
        return spellings().get(0);
    }

    /** Every spelling that is read, {@link #symbol()} first. */
    public List<String> spellings() {
        return List.of(spellings.split("\\|"));
    }

    /** The value in the base unit of {@link #kind()} of a number written in this unit. */
    public double toBase(double written) {
        return toBase(Fraction.of(written)).toDouble();
    }

    /** The number to write in this unit for a value in the base unit of {@link #kind()}. */
    public double fromBase(double base) {
        return unscaled(base).subtract(offset).doubleValue();
    }

    /** The size in the base unit of a difference (a tolerance) written in this unit: the offset left out. */
    public double differenceToBase(double written) {
        return differenceToBase(Fraction.of(written)).toDouble();
    }

    /** The number to write in this unit for a difference in the base unit. */
    public double differenceFromBase(double base) {
        return unscaled(base).doubleValue();
    }

    Fraction toBase(Fraction written) {
        return differenceToBase(written.plus(new Fraction(offset, BigDecimal.ONE)));
    }

    Fraction differenceToBase(Fraction written) {
        return written.times(new Fraction(numerator, denominator));
    }

    private BigDecimal unscaled(double base) {
        return new BigDecimal(base).multiply(denominator).divide(numerator, MathContext.DECIMAL128);
    }

    static List<Unit> of(Kind kind) {
        return Arrays.stream(values()).filter(unit -> unit.kind == kind).toList();
    }
}
