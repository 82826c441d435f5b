package org.spile.geometry.house;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.spile.geometry.house.duct.Section;
import org.spile.geometry.house.duct.Sides;
import org.spile.geometry.house.spot.Axis;
import org.spile.geometry.house.spot.Way;
import org.spile.geometry.kernel.measure.Stack;

/**
 * A clear section across a leg that runs mainly along one axis: its sizes along the two others.
 *
 * @param main the leg's axis
 * @param sizes along the other two
 * @param form what shape it has
 */
record Cross(Axis main, Map<Axis, Stack> sizes, Form form) {
    /** Shapes of sections. */
    enum Form {
        /** Four corners. */
        RECTANGULAR,
        /** A circle. */
        ROUND,
        /** Two half circles and two flats. */
        OVAL
    }

    Cross {
        sizes = new EnumMap<>(sizes);
        if (sizes.size() != 2 || sizes.containsKey(main)) {
            throw new IllegalArgumentException("a section across " + main + " with sizes along " + sizes.keySet());
        }
    }

    static Cross of(Axis main, Stack first, Stack second, Form form) {
        Map<Axis, Stack> sizes = new EnumMap<>(Axis.class);
        sizes.put(first(main), first);
        sizes.put(second(main), second);
        return new Cross(main, sizes, form);
    }

    /** The level side of a level leg; across the trailer on an upright one. */
    static Axis first(Axis main) {
        return main == Axis.Y ? Axis.X : Axis.Y;
    }

    /** The upright side of a level leg; fore and aft on an upright one. */
    static Axis second(Axis main) {
        return main == Axis.Z ? Axis.X : Axis.Z;
    }

    Stack size(Axis axis) {
        return sizes.get(axis);
    }

    /** Round a right-angled bend: the side square to the bend stays, the other turns with the duct. */
    Cross turned(Axis next) {
        if (next == main) {
            return this;
        }
        Axis kept = Slabs.third(main, next);
        Map<Axis, Stack> turned = new EnumMap<>(Axis.class);
        turned.put(kept, sizes.get(kept));
        turned.put(main, sizes.get(next));
        return new Cross(next, turned, form);
    }

    /** Every side further out. */
    Cross wrapped(Stack thick) {
        Map<Axis, Stack> wrapped = new EnumMap<>(Axis.class);
        sizes.forEach((axis, size) -> wrapped.put(axis, size.plus(thick.times(2))));
        return new Cross(main, wrapped, form);
    }

    /** As a duct's section says it. */
    Section section() {
        double wide = sizes.get(first(main)).valueMm();
        double high = sizes.get(second(main)).valueMm();
        return switch (form) {
            case RECTANGULAR -> new Section.Rectangular(wide, high);
            case ROUND -> new Section.Round(wide);
            case OVAL -> new Section.FlatOval(wide, high);
        };
    }

    /** The sides of that section. */
    Sides sides() {
        return new Sides(sizes.get(first(main)), sizes.get(second(main)));
    }

    boolean positive() {
        return sizes.values().stream().allMatch(size -> size.valueMm() > 0);
    }

    /** Whether another has the same shape and, to a hundredth, the same sizes. */
    boolean same(Cross other) {
        return main == other.main
                && form == other.form
                && sizes.keySet().stream()
                        .allMatch(axis ->
                                Math.abs(size(axis).valueMm() - other.size(axis).valueMm()) < 0.01);
    }

    /** The section of an opening, its side and up taken as the axes they lie nearest to. */
    static Optional<Cross> of(Opening opening) {
        if (opening.wide().isEmpty() || opening.high().isEmpty()) {
            return Optional.empty();
        }
        Map<Axis, Stack> sizes = new EnumMap<>(Axis.class);
        sizes.put(Axis.nearest(opening.side()), opening.wide().get());
        sizes.put(Axis.nearest(opening.up()), opening.high().get());
        Way way = Way.nearest(opening.outward());
        return Optional.of(new Cross(way.axis(), sizes, opening.round() ? Form.ROUND : Form.RECTANGULAR));
    }
}
