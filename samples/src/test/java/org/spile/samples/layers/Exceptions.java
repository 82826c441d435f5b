package org.spile.samples.layers;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaField;
import java.util.LinkedHashMap;
import java.util.Map;

/** The classes that a rule about fields lets pass, each beside its reason; names are relative to the root package. */
final class Exceptions {

    static final Exceptions NONE = new Exceptions(reasons());

    /** Fields that others in the package may read. */
    static final Exceptions OPEN = new Exceptions(reasons(
            "geometry.kernel.planar.Rings",
            "its arrays are read corner by corner in the innermost loops of its package"));

    /** Fields that change. */
    static final Exceptions MOVING = new Exceptions(reasons(
            "geometry.kernel.planar.PlanarGap",
                    "a workspace, one a thread: measures pairs by the thousand without allocating",
            "geometry.kernel.solid.ConvexHull", "grows point by point inside one call and is dropped"));

    private final Map<String, String> reasons;

    private Exceptions(Map<String, String> reasons) {
        this.reasons = reasons;
    }

    private static Map<String, String> reasons(String... nameThenReason) {
        var reasons = new LinkedHashMap<String, String>();
        for (int i = 0; i < nameThenReason.length; i += 2) {
            reasons.put(nameThenReason[i], nameThenReason[i + 1]);
        }
        return reasons;
    }

    Iterable<String> names() {
        return reasons.keySet();
    }

    DescribedPredicate<JavaField> below(String root) {
        return DescribedPredicate.describe("stand in the list of exceptions", field -> {
            var name = field.getOwner().getName();
            return name.startsWith(root + ".") && reasons.containsKey(name.substring(root.length() + 1));
        });
    }
}
