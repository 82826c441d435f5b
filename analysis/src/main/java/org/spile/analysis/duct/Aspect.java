package org.spile.analysis.duct;

import org.spile.geometry.house.duct.Section;

/** How flat a section is: its long side over its short one, 1 for a circle. */
public final class Aspect {
    private Aspect() {}

    /** Of a section; 1 or more. */
    public static double of(Section section) {
        return Math.max(section.wideMm(), section.highMm()) / Math.min(section.wideMm(), section.highMm());
    }
}
