package org.spile.exporters.sheets;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.place.NoPlace;
import org.spile.analysis.place.PlaceAnswer;
import org.spile.analysis.place.PlaceMap;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Material;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.layout.Laid;
import org.spile.exporters.drawing.layout.Panel;
import org.spile.exporters.drawing.layout.SheetLayout;
import org.spile.exporters.drawing.layout.Side;
import org.spile.exporters.drawing.layout.ViewDraft;
import org.spile.geometry.house.CavitySpace;
import org.spile.geometry.house.Part;
import org.spile.geometry.house.PartKind;
import org.spile.geometry.house.RoomSpace;
import org.spile.geometry.house.Scene;
import org.spile.geometry.house.Travels;
import org.spile.geometry.kernel.measure.Written;
import org.spile.geometry.kernel.planar.Outline;
import org.spile.geometry.kernel.solid.Box3;

/** The map of a unit's places: for each way to turn it the plan of what it is in, and where its middle may be. */
public final class PlaceSheets {
    /** Half the cross that marks a middle (mm). */
    private static final double CROSS_MM = 40;

    private static final double SAME_DEG = 1e-6;

    private final Subject subject;
    private final PlaceAnswer answer;
    private final Scene scene;
    private final List<Outline> within;

    private PlaceSheets(Subject subject, PlaceAnswer answer) {
        this.subject = subject;
        this.answer = answer;
        this.scene = subject.house().travels().alone(subject.house().stances().get(0), answer.trailer());
        this.within = within();
    }

    /** The cavity or room it is in; of what stands on a trailer its deck. */
    private List<Outline> within() {
        Stream<Outline> cavities = scene.cavities().stream()
                .filter(space -> space.id().equals(answer.in()))
                .map(CavitySpace::outline);
        Stream<Outline> rooms = scene.rooms().stream()
                .filter(room -> room.id().equals(answer.in()))
                .map(RoomSpace::outline);
        List<Outline> found = Stream.concat(cavities, rooms).toList();
        if (!found.isEmpty()) {
            return found;
        }
        Travels.Deck deck = subject.house().travels().deck(answer.trailer());
        return List.of(Outline.rectangle(
                deck.rear().valueMm(),
                deck.right().valueMm(),
                deck.front().valueMm(),
                deck.left().valueMm()));
    }

    /** Lays the sheet out; what can't be answered has no maps, and no sheet is laid out for it. */
    public static Laid of(Subject subject, PlaceAnswer answer) {
        return new PlaceSheets(subject, answer).lay();
    }

    private Laid lay() {
        SheetLayout layout = SheetLayout.named("place", subject.block("Places of " + answer.title(), "map of places"))
                .panel(panel())
                .withoutLegend();
        List<PlaceMap> shown = answer.maps().stream().filter(this::shown).toList();
        (shown.isEmpty() ? answer.maps() : shown).forEach(map -> layout.view(view(map)));
        return layout.lay();
    }

    /** A turn without a place isn't drawn, unless it is the present one. */
    private boolean shown(PlaceMap map) {
        return !map.free().isEmpty() || isNow(map);
    }

    private boolean isNow(PlaceMap map) {
        return Math.abs(map.yawDeg() - answer.nowYawDeg()) < SAME_DEG;
    }

    private ViewDraft view(PlaceMap map) {
        String turned = Written.number(map.yawDeg(), 1);
        ViewDraft draft = ViewDraft.named(
                        "place-" + turned.replace("-", "m").replace('.', '-'),
                        answer.title() + " turned " + turned + " deg")
                .cutAt(map.free().isEmpty() ? "no place" : "hatched: where the middle of its box may be")
                .scaled(Scale.oneTo(10), Scale.oneTo(100))
                .forward(Side.RIGHT);
        var dimensions = new DimensionsOnce(draft);
        for (Outline outline : within) {
            draft.outline(Layer.CAVITIES.pen().of(answer.in()), outline.shell());
            outline.holes().forEach(hole -> draft.outline(Layer.CAVITIES.pen().of(answer.in()), hole));
            dimensions.level(Canvas.extent(outline), Side.ABOVE, answer.in());
            dimensions.upright(Canvas.extent(outline), Side.LEFT, answer.in());
        }
        obstacles(draft);
        free(draft, map, dimensions);
        return draft;
    }

    /** What stands where the unit could, each thing named once. */
    private void obstacles(ViewDraft draft) {
        Set<String> named = new HashSet<>();
        for (Part part : scene.parts()) {
            boolean solid =
                    part.kind() != PartKind.LINING && part.kind() != PartKind.SHELL && part.kind() != PartKind.SERVICE;
            boolean goes =
                    part.thing().equals(answer.unit()) || answer.leftOut().contains(part.thing());
            if (solid && !goes && part.spaces().contains(answer.in())) {
                part.shown()
                        .map(Shadow::of)
                        .orElse(List.of())
                        .forEach(outline -> draft.outline(Pens.of(part).beyond(), outline.shell()));
                if (named.add(part.thing())) {
                    Vector3D middle = part.body().bounds().middle();
                    String name = part.thing().substring(part.thing().lastIndexOf('.') + 1);
                    draft.name(name, part.thing(), Vector2D.of(middle.getX(), middle.getY()));
                }
            }
        }
    }

    private void free(ViewDraft draft, PlaceMap map, DimensionsOnce dimensions) {
        Pen pen = Layer.FINDINGS.pen().of(answer.unit());
        List<Vector2D> corners = new ArrayList<>();
        for (Outline area : map.free().areas()) {
            List<List<Vector2D>> loops = new ArrayList<>(List.of(area.shell()));
            loops.addAll(area.holes());
            draft.cutAreaWithHoles(Material.GENERAL, answer.unit(), loops);
            loops.forEach(loop -> draft.outline(pen, loop));
            corners.addAll(area.shell());
        }
        map.free().lines().forEach(line -> {
            draft.path(pen, line);
            corners.addAll(line);
        });
        map.free().points().forEach(point -> {
            cross(draft, pen, point);
            corners.add(point);
        });
        if (!corners.isEmpty()) {
            Extent extent = Extent.around(corners);
            dimensions.level(extent, Side.BELOW, answer.unit());
            dimensions.upright(extent, Side.RIGHT, answer.unit());
        }
        map.best().ifPresent(best -> box(draft, map.box(), best, answer.title() + ", roomiest place"));
        if (isNow(map)) {
            box(draft, map.box(), answer.now(), answer.title() + ", as it is now");
        }
    }

    private void box(ViewDraft draft, Box3 box, Vector3D at, String says) {
        Pen pen = Layer.UNITS.pen().of(answer.unit());
        Vector2D middle = Vector2D.of(at.getX(), at.getY());
        draft.outline(
                pen,
                List.of(
                        middle.add(Vector2D.of(box.minX(), box.minY())),
                        middle.add(Vector2D.of(box.maxX(), box.minY())),
                        middle.add(Vector2D.of(box.maxX(), box.maxY())),
                        middle.add(Vector2D.of(box.minX(), box.maxY()))));
        cross(draft, Layer.AXES.pen().of(answer.unit()), middle);
        draft.name(says, answer.unit(), middle);
    }

    private static void cross(ViewDraft draft, Pen pen, Vector2D at) {
        draft.path(pen, List.of(at.add(Vector2D.of(-CROSS_MM, 0)), at.add(Vector2D.of(CROSS_MM, 0))));
        draft.path(pen, List.of(at.add(Vector2D.of(0, -CROSS_MM)), at.add(Vector2D.of(0, CROSS_MM))));
    }

    private Panel panel() {
        List<Panel.Item> items = new ArrayList<>();
        items.add(new Panel.Item(
                "",
                "At a place of the map nothing of fit fails because of " + answer.title()
                        + " as drawn, in any stance looked at; borders belong to it."));
        String none = answer.maps().stream()
                .filter(map -> map.free().isEmpty())
                .map(map -> Written.number(map.yawDeg(), 1))
                .collect(Collectors.joining(", "));
        if (!none.isEmpty()) {
            items.add(new Panel.Item("", "No place turned by " + none + " deg."));
        }
        if (!answer.leftOut().isEmpty()) {
            items.add(new Panel.Item("", "Left out, to be made anew: " + String.join(", ", answer.leftOut()) + "."));
        }
        answer.empty()
                .flatMap(NoPlace::governing)
                .ifPresent(asked -> items.add(new Panel.Item(
                        "",
                        "No place. Governing: " + asked.limit().says() + "; it alone would have to yield "
                                + Written.number(asked.yieldMm().orElse(0), 1) + " mm.")));
        answer.empty()
                .ifPresent(empty -> empty.levers().stream()
                        .filter(lever -> lever.set().isPresent())
                        .forEach(lever ->
                                items.add(new Panel.Item("", lever.set().get() + " opens one."))));
        return new Panel("What it shows", items);
    }
}
