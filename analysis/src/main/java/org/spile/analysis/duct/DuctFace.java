package org.spile.analysis.duct;

import java.util.Arrays;
import java.util.Optional;

/**
 * How rough the inner face of a duct is, by what it is made of: absolute roughness for Colebrook's formula.
 *
 * <p>Single values as they were read from the sources, each to be overridden by what a house file or a maker says.
 */
public enum DuctFace {
    /** Plastic pipe. */
    PVC("pvc", "plastic pipe", 0.03, 0.01, 0.05, Words.ASHRAE + ", after Swim 1982"),
    /** Drawn or seamed aluminium. */
    ALU("alu", "round aluminium, crimped joints", 0.05, 0.04, 0.06, Words.ASHRAE + ", after Hutchinson 1953"),
    /** Galvanised pipe with one seam along it. */
    SEAMED("seamed", "round galvanised, one seam along it", 0.07, 0.05, 0.10, Words.ASHRAE + ", after Griggs 1987"),
    /** Galvanised pipe with a spiral seam: the handbooks' average duct. */
    SPIRAL("spiral", "round galvanised, spiral seam", 0.09, 0.06, 0.12, Words.ASHRAE + ", after Jones 1979"),
    /** Galvanised rectangular duct. */
    GALV("galv", "rectangular galvanised", 0.12, 0.08, 0.15, Words.ASHRAE + ", after Griggs 1992"),
    /** Plywood across its grain. */
    PLY("ply", "birch plywood, across the grain", 0.12, 0.03, 0.12, Words.IDELCHIK),
    /** Planed boards. */
    BOARDS("boards", "planed boards, well fitted", 0.3, 0.15, 0.7, Words.IDELCHIK),
    /** Foil-faced board. */
    BOARD("foil-board", "foil-faced board, joints every 1.5 m", 0.27, 0.15, 0.39, Words.ASHRAE + ", after Idem 2018"),
    /** Corrugated metal. */
    CORRUGATED("corrugated", "spiral corrugated metal", 0.75, 0.55, 0.91, Words.ASHRAE + ", after Kulkarni 2009"),
    /** Flexible duct pulled straight. */
    FLEXIBLE("flexible", "flexible, fully stretched", 0.9, 0.09, 0.9, Words.ASHRAE + ", after Abushakra and Culp");

    private final String word;
    private final String title;
    private final double roughMm;
    private final double leastMm;
    private final double mostMm;
    private final String source;

    DuctFace(String word, String title, double roughMm, double leastMm, double mostMm, String source) {
        this.word = word;
        this.title = title;
        this.roughMm = roughMm;
        this.leastMm = leastMm;
        this.mostMm = mostMm;
        this.source = source;
    }

    /** The handbooks' average duct: the face taken where nobody says one. */
    public static DuctFace usual() {
        return SPIRAL;
    }

    /** The face of that word, if there is one. */
    public static Optional<DuctFace> named(String word) {
        return Arrays.stream(values()).filter(face -> face.word.equals(word)).findFirst();
    }

    /** As it is typed. */
    public String word() {
        return word;
    }

    /** What people call it. */
    public String title() {
        return title;
    }

    /** The roughness to reckon with (mm). */
    public double roughMm() {
        return roughMm;
    }

    /** The least the source gives (mm). */
    public double leastMm() {
        return leastMm;
    }

    /** The most the source gives (mm). */
    public double mostMm() {
        return mostMm;
    }

    /** Where the values come from. */
    public String source() {
        return source;
    }

    // A nested class: an enum's own constants can't name its static fields.
    private static final class Words {
        static final String ASHRAE = "ASHRAE duct roughness table as reproduced in public";
        static final String IDELCHIK = "Idelchik, Handbook of Hydraulic Resistance, roughness table";
    }
}
