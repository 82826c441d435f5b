package org.spile.samples.layers;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.LinkedHashMap;
import java.util.Map;

/** The classes that a rule about fields lets pass, each beside its reason; names are relative to the root package. */
final class Exceptions {

    static final Exceptions NONE = new Exceptions(reasons());

    private static final String WORKSPACE =
            "workspaces of the innermost loops: pairs are measured by the thousand without allocating";

    /** Fields that others in the package may read. */
    static final Exceptions OPEN = new Exceptions(reasons(
            "geometry.kernel.planar.Rings",
            "its arrays are read corner by corner in the innermost loops of its package",
            "geometry.kernel.planar.ConvexSearch",
            WORKSPACE,
            "geometry.kernel.clearance.*",
            WORKSPACE));

    /** Fields that change. */
    static final Exceptions MOVING = new Exceptions(reasons(
            "geometry.kernel.planar.PlanarGap", WORKSPACE,
            "geometry.kernel.planar.ConvexSearch", WORKSPACE,
            "geometry.kernel.clearance.*", WORKSPACE,
            "geometry.kernel.clearance.PairDistance", WORKSPACE,
            "geometry.kernel.clearance.TooNear", WORKSPACE,
            "geometry.kernel.clearance.BroadPhase", "counts its nodes while it is built, and never after",
            "geometry.kernel.solid.TriangleTree", "counts its nodes while it is built, and never after",
            "geometry.kernel.solid.TriangleMeeting", WORKSPACE,
            "geometry.kernel.solid.ConvexHull", "grows point by point inside one call and is dropped",
            "geometry.house.duct.DuctPieces", "counts its way along one run and is dropped",
            "geometry.house.Walk", "walks along one run, corner by corner, and is dropped",
            "geometry.file.DxfPaths", "steps through one text and is dropped",
            "geometry.file.Scribe", "goes with one reading and is dropped",
            "exporters.drawing.layout.ViewDraft", "a view in the making: collects what a composer draws and asks for",
            "exporters.drawing.layout.SheetLayout", "a sheet in the making: collects views and words"));

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
        return DescribedPredicate.describe(
                "stand in the list of exceptions",
                field -> reasons.keySet().stream().anyMatch(name -> covers(root + "." + name, field.getOwner())));
    }

    /** A name that ends in {@code *} covers the types of that package which nobody outside it sees. */
    private static boolean covers(String name, JavaClass type) {
        return name.endsWith(".*")
                ? name.equals(type.getPackageName() + ".*")
                        && !type.getModifiers().contains(JavaModifier.PUBLIC)
                : name.equals(type.getName());
    }
}
