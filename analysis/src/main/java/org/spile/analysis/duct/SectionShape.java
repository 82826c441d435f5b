package org.spile.analysis.duct;

import org.spile.geometry.house.duct.Section;

/** A shape that a duct can be made in at a given depth. */
public enum SectionShape {
    /** Folded from sheet or board. */
    RECTANGULAR,
    /** Two half circles and two flats. */
    FLAT_OVAL;

    /** The section of that shape (mm). */
    public Section of(double wideMm, double highMm) {
        return switch (this) {
            case RECTANGULAR -> new Section.Rectangular(wideMm, highMm);
            case FLAT_OVAL -> new Section.FlatOval(wideMm, highMm);
        };
    }

    /** The shape that would be made in place of a section: a flat oval stays one, all else is folded. */
    public static SectionShape like(Section section) {
        return section instanceof Section.FlatOval ? FLAT_OVAL : RECTANGULAR;
    }
}
