package org.spile.geometry.house.duct;

/**
 * Any section as two pairs of flats with rounded corners between them: a rectangle has no radius, a circle no flats.
 *
 * <p>A sheet transition folded between two such sections, flats to flats and corners to corners, has four flat sides
 * (triangles where one end has no flat) and four quarter cones. Square to its axis it is again such a section, whose flats
 * and radius change evenly: so its area is a quadratic, and because its faces touch both ends with the same normals it is
 * also their hull, whose root of area is concave (Brunn–Minkowski).
 *
 * @param firstMm flat along the first axis of the section (mm)
 * @param secondMm flat along the second (mm)
 * @param radiusMm of the corners (mm)
 */
record Clear(double firstMm, double secondMm, double radiusMm) {
    static Clear of(Section section) {
        if (section instanceof Section.Rectangular) {
            return new Clear(section.wideMm(), section.highMm(), 0);
        }
        double minor = Math.min(section.wideMm(), section.highMm());
        return new Clear(section.wideMm() - minor, section.highMm() - minor, minor / 2);
    }

    /** The section at a share of the way to another. */
    Clear toward(Clear other, double share) {
        return new Clear(
                firstMm + share * (other.firstMm - firstMm),
                secondMm + share * (other.secondMm - secondMm),
                radiusMm + share * (other.radiusMm - radiusMm));
    }

    /** Overall size along the first axis (mm). */
    double wideMm() {
        return firstMm + 2 * radiusMm;
    }

    /** Overall size along the second axis (mm). */
    double highMm() {
        return secondMm + 2 * radiusMm;
    }

    /** Area (mm2). */
    double areaMm2() {
        return area(firstMm, secondMm, radiusMm);
    }

    static double area(double firstMm, double secondMm, double radiusMm) {
        return firstMm * secondMm + 2 * radiusMm * (firstMm + secondMm) + Math.PI * radiusMm * radiusMm;
    }
}
