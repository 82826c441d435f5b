package org.spile.geometry.house.duct;

/**
 * A duct's clear section, square to its path (mm).
 *
 * <p>{@code wideMm} lies level and {@code highMm} upright on a level leg; on an upright leg wide lies across the trailer
 * and high fore and aft.
 */
public sealed interface Section {
    /** Overall level side (mm). */
    double wideMm();

    /** Overall upright side (mm). */
    double highMm();

    /** Clear area (mm2). */
    double areaMm2();

    /** Wetted perimeter (mm). */
    double perimeterMm();

    /** Rectangle. */
    record Rectangular(double wideMm, double highMm) implements Section {
        /** Refuses sizes that aren't positive. */
        public Rectangular {
            Sizes.check(wideMm, highMm);
        }

        @Override
        public double areaMm2() {
            return wideMm * highMm;
        }

        @Override
        public double perimeterMm() {
            return 2 * (wideMm + highMm);
        }
    }

    /** Circle. */
    record Round(double diameterMm) implements Section {
        /** Refuses sizes that aren't positive. */
        public Round {
            Sizes.check(diameterMm, diameterMm);
        }

        @Override
        public double wideMm() {
            return diameterMm;
        }

        @Override
        public double highMm() {
            return diameterMm;
        }

        @Override
        public double areaMm2() {
            return Math.PI * diameterMm * diameterMm / 4;
        }

        @Override
        public double perimeterMm() {
            return Math.PI * diameterMm;
        }
    }

    /** Two half circles and two flats. */
    record FlatOval(double wideMm, double highMm) implements Section {
        /** Refuses sizes that aren't positive. */
        public FlatOval {
            Sizes.check(wideMm, highMm);
        }

        @Override
        public double areaMm2() {
            double minor = Math.min(wideMm, highMm);
            double flat = Math.abs(wideMm - highMm);
            return Math.PI * minor * minor / 4 + flat * minor;
        }

        @Override
        public double perimeterMm() {
            double minor = Math.min(wideMm, highMm);
            return Math.PI * minor + 2 * Math.abs(wideMm - highMm);
        }
    }

    /** Checks shared by all sections. */
    final class Sizes {
        private Sizes() {}

        static void check(double wideMm, double highMm) {
            if (!(wideMm > 0) || !(highMm > 0)) {
                throw new IllegalArgumentException("a section needs positive sides, not " + wideMm + " x " + highMm);
            }
        }
    }
}
