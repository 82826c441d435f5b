package org.spile.exporters.drawing.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Hatch;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Material;
import org.spile.exporters.drawing.Patch;
import org.spile.exporters.drawing.Pen;
import org.spile.exporters.drawing.Polyline;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.Stroke;
import org.spile.exporters.drawing.Text;
import org.spile.exporters.drawing.View;

/**
 * A view in the making: what is drawn, and what is asked for and must still find its place. At a scale it becomes a
 * {@link View}. A draft may be laid out at several scales; each time the same marks come out.
 *
 * <pre>{@code
 * var plan = ViewDraft.named("plan", "Plan")
 *         .cutAt("cut at 1200 above the deck")
 *         .inPlace()
 *         .outline(Layer.STRUCTURE.pen().of("trailers.bunk"), deckCorners)
 *         .cutArea(Material.PLY, "trailers.bunk", wallCorners)
 *         .dimension(Dimension.level(rear, front, Side.BELOW).of("trailers.bunk"))
 *         .name("cooler", "units.cooler", coolerMiddle)
 *         .flag(1, "fit.clearance-7", at, to, "units.cooler")
 *         .forward(Side.RIGHT);
 * }</pre>
 */
public final class ViewDraft {
    private final String name;
    private final String title;
    private final List<Mark> marks = new ArrayList<>();
    private final List<CuttingPlane> planes = new ArrayList<>();
    private final List<Dimension> dimensions = new ArrayList<>();
    private final List<RunningDimension> running = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();
    private final List<FlagRequest> flags = new ArrayList<>();
    private final List<Balloon> balloons = new ArrayList<>();
    private String cut = "";
    private boolean inPlace;
    private boolean bar = true;
    private Optional<Side> forward = Optional.empty();
    private Scale largest = Scale.oneTo(20);
    private Scale smallest = Scale.oneTo(1000);

    private ViewDraft(String name, String title) {
        this.name = name;
        this.title = title;
    }

    /**
     * An empty draft.
     *
     * @param name its own name among the drawing's views, lower case and hyphens
     * @param title what it shows, in words
     */
    public static ViewDraft named(String name, String title) {
        return new ViewDraft(name, title);
    }

    /** Says where the view is cut, beneath its title. */
    public ViewDraft cutAt(String words) {
        cut = words;
        return this;
    }

    /** Says that its coordinates are the site's own. */
    public ViewDraft inPlace() {
        inPlace = true;
        return this;
    }

    /**
     * Says how large it should be drawn.
     *
     * @param wanted the scale taken if paper allows
     * @param least the smallest picture that is still of use
     */
    public ViewDraft scaled(Scale wanted, Scale least) {
        if (least.modelPerPaper() < wanted.modelPerPaper()) {
            throw new IllegalArgumentException("least scale " + least.says() + " is larger than " + wanted.says());
        }
        largest = wanted;
        smallest = least;
        return this;
    }

    /** Leaves the scale bar out. */
    public ViewDraft withoutScaleBar() {
        bar = false;
        return this;
    }

    /** Adds an arrow that says which way is forward. */
    public ViewDraft forward(Side side) {
        forward = Optional.of(side);
        return this;
    }

    /** Adds marks in model millimetres; they stay where they are. */
    public ViewDraft draw(Mark... more) {
        marks.addAll(List.of(more));
        return this;
    }

    /** Adds marks in model millimetres; they stay where they are. */
    public ViewDraft draw(Collection<? extends Mark> more) {
        marks.addAll(more);
        return this;
    }

    /** Adds a closed outline of straight pieces (model mm). */
    public ViewDraft outline(Pen pen, List<Vector2D> corners) {
        return draw(Polyline.outline(pen, corners));
    }

    /** Adds an open line of straight pieces (model mm). */
    public ViewDraft path(Pen pen, List<Vector2D> corners) {
        return draw(Polyline.path(pen, corners));
    }

    /**
     * Adds the hatching of a cut area; its outline is drawn apart.
     *
     * @param material what is cut
     * @param part path of the thing
     * @param outline its corners (model mm)
     */
    public ViewDraft cutArea(Material material, String part, List<Vector2D> outline) {
        return cutAreaWithHoles(material, part, List.of(outline));
    }

    /**
     * Adds the hatching of a cut area with holes; its outlines are drawn apart.
     *
     * @param material what is cut
     * @param part path of the thing
     * @param loops corners of each loop; what lies inside an odd number of them is hatched (model mm)
     */
    public ViewDraft cutAreaWithHoles(Material material, String part, List<List<Vector2D>> loops) {
        var pen = Layer.HATCHING.pen().of(part);
        var outlines = loops.stream().map(loop -> Polyline.outline(pen, loop)).toList();
        return draw(new Hatch(pen, material, outlines, 0));
    }

    /** Asks for a dimension. */
    public ViewDraft dimension(Dimension dimension) {
        dimensions.add(dimension);
        return this;
    }

    /** Asks for dimensions. */
    public ViewDraft dimensions(Collection<Dimension> more) {
        dimensions.addAll(more);
        return this;
    }

    /** Asks for running dimensions. */
    public ViewDraft running(RunningDimension dimension) {
        running.add(dimension);
        return this;
    }

    /** Asks for a name on or beside a thing (model mm). */
    public ViewDraft name(String says, String part, Vector2D at) {
        return label(new Label(List.of(says), at, Text.USUAL_MM, part));
    }

    /** Asks for a label. */
    public ViewDraft label(Label label) {
        labels.add(label);
        return this;
    }

    /**
     * Asks for a finding's flag.
     *
     * @param number the flag's number, as the sheet's list of findings has it
     * @param finding the finding's id
     * @param at first witness point (model mm)
     * @param to second witness point (model mm)
     * @param part path of the finding's subject
     */
    public ViewDraft flag(int number, String finding, Vector2D at, Vector2D to, String part) {
        flags.add(new FlagRequest(number, finding, at, to, part));
        return this;
    }

    /** Asks for a numbered tape. */
    public ViewDraft balloon(Balloon balloon) {
        balloons.add(balloon);
        return this;
    }

    /**
     * Shows where another view is cut.
     *
     * @param letter of the section
     * @param from one end (model mm)
     * @param to the other end (model mm)
     * @param looks the side towards which the section looks
     */
    public ViewDraft cuttingPlane(String letter, Vector2D from, Vector2D to, Side looks) {
        planes.add(new CuttingPlane(letter, from, to, looks));
        return this;
    }

    /** Its own name. */
    public String name() {
        return name;
    }

    /** The scale taken if paper allows. */
    public Scale largest() {
        return largest;
    }

    /** The smallest picture that is still of use. */
    public Scale smallest() {
        return smallest;
    }

    /**
     * The hatchings it shows at a scale, in the order they were drawn, each once; what is too thin to hatch counts as
     * {@link Material#SHEET}.
     */
    List<Material> materials(Scale scale) {
        return marks.stream()
                .filter(Hatch.class::isInstance)
                .map(Hatch.class::cast)
                .map(hatch -> hatch.solid(scale.modelPerPaper()) ? Material.SHEET : hatch.material())
                .distinct()
                .toList();
    }

    /**
     * Lays the view out at a scale.
     *
     * @param scale how large
     * @return the view, its lower left corner at the paper's origin
     * @throws IllegalArgumentException if nothing is drawn
     */
    public View at(Scale scale) {
        var unit = scale.modelPerPaper();
        var outline = outline(unit);
        var all = new ArrayList<Mark>(marks);
        all.addAll(new CuttingPlanes(planes).strokes(unit));
        var strokes = all.stream().flatMap(mark -> mark.strokes().stream()).toList();
        var ground = LabelLayout.ground(strokes, unit);
        var notes = new LabelLayout(ground, unit);
        // Gaps stand where they are: on the ground before anything that can still move.
        var gaps = flags.stream().map(notes::gap).toList();
        var tapes = balloons.stream().map(notes::tape).toList();
        var rows = planes.isEmpty() ? outline : reach(outline, all, unit);
        all.addAll(new DimensionLayout(ground, rows, unit).place(dimensions));
        for (var each : running) {
            all.addAll(new RunningLayout(each, ground, rows, unit).place());
        }
        for (var i = 0; i < flags.size(); i++) {
            all.add(notes.place(flags.get(i), gaps.get(i)));
        }
        for (var i = 0; i < balloons.size(); i++) {
            all.add(notes.place(balloons.get(i), tapes.get(i)));
        }
        all.addAll(notes.placeAll(labels));
        var drawn = reach(outline, all, unit);
        var caption = new Caption(title, cut, scale, bar, forward).under(outline, drawn);
        all.addAll(caption);
        return new View(name, title, scale, reach(drawn, caption, unit), Vector2D.ZERO, all, inPlace);
    }

    /** What is drawn of the thing itself, texts left out: dimension rows count from here. */
    private Extent outline(double unit) {
        var corners = new ArrayList<Vector2D>();
        for (var mark : marks) {
            if (mark instanceof Hatch hatch) {
                hatch.loops().forEach(loop -> add(corners, loop, unit));
            }
            for (var stroke : mark.strokes()) {
                if (!(stroke instanceof Text)) {
                    add(corners, stroke, unit);
                }
            }
        }
        if (corners.isEmpty()) {
            throw new IllegalArgumentException("view " + name + " draws nothing");
        }
        return Extent.around(corners);
    }

    private static Extent reach(Extent from, Collection<? extends Mark> marks, double unit) {
        var corners = new ArrayList<>(from.corners());
        for (var mark : marks) {
            mark.strokes().forEach(stroke -> add(corners, stroke, unit));
        }
        // Half the widest line, so that no edge is cut at the window's border.
        return Extent.around(corners).grown(0.35 * unit);
    }

    private static void add(List<Vector2D> corners, Stroke stroke, double unit) {
        for (Patch patch : stroke.patches(unit)) {
            corners.addAll(patch.corners());
        }
    }
}
