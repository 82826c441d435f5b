package org.spile.geometry.house;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.spile.geometry.house.spot.FirstOrder;
import org.spile.geometry.kernel.measure.Stack;

/** What carries things: fixtures, movers and other units, with the height of their tops. */
final class Carriers {
    private final Map<String, Stood> stood = new LinkedHashMap<>();
    private final Set<String> told;
    private final Names names;
    private final Troubles troubles;

    /**
     * @param told ids of everything that could carry, placed or not
     */
    Carriers(Set<String> told, Names names, Troubles troubles) {
        this.told = told;
        this.names = names;
        this.troubles = troubles;
    }

    void add(String id, Stood thing) {
        stood.put(id, thing);
    }

    boolean knows(String id) {
        return told.contains(id);
    }

    Set<String> ids() {
        return told;
    }

    /** The height on which a thing stands that stands on these: the highest top. */
    Optional<Stack> top(List<String> carriers, String path, Units units) {
        Stack top = null;
        for (String id : carriers) {
            Optional<Stood> carrier =
                    Optional.ofNullable(stood.get(id)).or(() -> units.get(id).map(UnitPlace::stood));
            if (carrier.isEmpty()) {
                if (!knows(id) && !units.knows(id)) {
                    names.missing(path, id, told, "something to stand on", troubles);
                }
                return Optional.empty();
            }
            Stack height = carrier.get().own().z().high();
            top = top == null ? height : FirstOrder.greater(top, height);
        }
        return Optional.ofNullable(top);
    }
}
