package org.spile.geometry.house;

import java.util.List;

/** What came of working a told house out: the house, or everything that is wrong with it. */
public sealed interface Resolved {
    /** It adds up. */
    record Sound(House house) implements Resolved {}

    /** It doesn't; at least one trouble, in the order of the file. */
    record Wrong(List<Trouble> troubles) implements Resolved {
        /** Copies the list. */
        public Wrong {
            troubles = List.copyOf(troubles);
            if (troubles.isEmpty()) {
                throw new IllegalArgumentException("a wrong house needs a trouble");
            }
        }
    }
}
