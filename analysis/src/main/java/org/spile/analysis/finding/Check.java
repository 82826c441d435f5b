package org.spile.analysis.finding;

import java.util.List;
import org.spile.geometry.house.House;

/** One question put to a house. */
public interface Check {
    /** Dotted name, as {@code air}; its findings carry it or a name below it, as {@code air.flow}. */
    String name();

    /** Every name that its findings may carry, in the order in which they are shown. */
    default List<String> names() {
        return List.of(name());
    }

    /** Its answers, in a fixed order. */
    List<Finding> findings(House house);

    /** The same answers without seeking remedies: for whoever asks many houses. */
    default List<Finding> withoutRemedies(House house) {
        return findings(house);
    }
}
