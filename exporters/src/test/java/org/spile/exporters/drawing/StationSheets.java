package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.layout.Dimension;
import org.spile.exporters.drawing.layout.Laid;
import org.spile.exporters.drawing.layout.Panel;
import org.spile.exporters.drawing.layout.RunningDimension;
import org.spile.exporters.drawing.layout.SheetLayout;
import org.spile.exporters.drawing.layout.Side;
import org.spile.exporters.drawing.layout.ViewDraft;

/** Drawings of a field station like Saltmarsh, made by hand: two docked trailers, a cooler in a lowered ceiling. */
public final class StationSheets {
    private StationSheets() {}

    /** Plan and section, as a composer would ask for them. */
    public static SheetSet set() {
        return SheetSet.numbered("Saltmarsh", List.of(plan(), section()));
    }

    public static Sheet plan() {
        return fits(SheetLayout.named("plan", block("Saltmarsh, plan", "SM-01"))
                .view(planDraft())
                .panel(Panel.numbered(
                        "notes",
                        List.of(
                                "Dimensions run to finished faces unless stated.",
                                "Check every size on site before cutting.",
                                "Electrical and refrigerant work only by licensed trades, under local codes.")))
                .panel(new Panel(
                        "findings",
                        List.of(new Panel.Item(
                                "1",
                                "cooler to roof lining: 13.5 found, 20 demanded by its maker; lower the ceiling of the"
                                        + " lobby by 6.5 mm."))))
                .lay());
    }

    public static Sheet section() {
        return fits(SheetLayout.named(
                        "section-a",
                        block("Saltmarsh, section A–A", "SM-02")
                                .revised(List.of(new Revision("A", "ceiling lowered by 6.5", "2026-02-01", "rk"))))
                .view(sectionDraft())
                .view(detailDraft())
                .projection(Projection.THIRD_ANGLE)
                .panel(Panel.numbered("cautions", List.of("Support the unit before its hangers are loosened.")))
                .lay());
    }

    public static Sheet fits(Laid laid) {
        if (laid instanceof Laid.Fits fits) {
            return fits.sheet();
        }
        throw new IllegalStateException(laid.toString());
    }

    private static TitleBlock block(String title, String number) {
        return TitleBlock.of(title, "general arrangement", number)
                .ownedBy("Saltmarsh field station")
                .supplemented("wet lab and bunk house, docked")
                .issued("2026-01-15", "r. keel", "")
                .tolerated("± 3");
    }

    static List<Vector2D> box(double x, double y, double wide, double high) {
        return Extent.ofSize(x, y, wide, high).corners();
    }

    static Vector2D at(double x, double y) {
        return Vector2D.of(x, y);
    }

    public static ViewDraft planDraft() {
        var draft = ViewDraft.named("plan", "Plan, docked")
                .cutAt("cut at 1200 above the deck")
                .inPlace()
                .forward(Side.RIGHT)
                .scaled(Scale.oneTo(20), Scale.oneTo(50));
        shell(draft, "trailers.wet-lab", -3600, -1200, 7200, 2400);
        shell(draft, "trailers.bunk-house", -3600, 1350, 6000, 2400);
        draft.outline(Layer.FIXTURES.pen().of("fixtures.bench"), box(-3500, -1100, 2400, 600));
        draft.outline(Layer.FIXTURES.pen().of("fixtures.bunks"), box(400, 1450, 1900, 900));
        draft.outline(Layer.UNITS.pen().hidden().of("units.cooler"), box(700, -350, 450, 700));
        draft.outline(Layer.SERVICE_ROOM.pen().of("units.cooler"), box(1150, -350, 600, 700));
        draft.draw(new Polyline(
                Layer.DUCTS.pen().hidden().of("runs.bunk"),
                List.of(
                        Vertex.of(700, -100),
                        Vertex.of(-400, -100),
                        new Vertex(at(-600, 100), 0.41421356),
                        Vertex.of(-600, 1500),
                        Vertex.of(-1000, 1500),
                        Vertex.of(-1000, 100),
                        Vertex.of(-600, 300),
                        Vertex.of(700, 300)),
                true));
        draft.draw(Line.of(Layer.AXES.pen(), -3800, 0, 3900, 0));
        draft.draw(new Circle(Layer.SERVICES.pen().of("lines.drain"), at(925, -900), 25));
        draft.draw(new Arc(Layer.MOVERS.pen().beyond().of("movers.door"), at(2600, -1170), 700, 0, 90));
        draft.draw(Line.of(Layer.MOVERS.pen().of("movers.door"), 2600, -1170, 2600, -470));
        draft.draw(new Insert(
                Layer.TERMINALS.pen().of("terminals.bunk-grille"),
                new Symbol(
                        "grille-300-100",
                        List.of(
                                Polyline.outline(Layer.TERMINALS.pen(), box(-150, -50, 300, 100)),
                                Line.of(Layer.TERMINALS.pen().beyond(), -150, -50, 150, 50))),
                at(-800, 1550),
                0,
                List.of(new Insert.Attribute("ID", "bunk-grille"), new Insert.Attribute("FREE_AREA", "70 %"))));
        draft.dimension(
                Dimension.level(at(-3600, -1200), at(3600, -1200), Side.BELOW).of("trailers.wet-lab"));
        draft.dimensions(Dimension.chain(
                List.of(
                        at(-3600, -1200),
                        at(-3500, -1100),
                        at(-1100, -1100),
                        at(700, -350),
                        at(1150, -350),
                        at(1750, -350)),
                Side.BELOW));
        draft.dimension(
                Dimension.level(at(-3600, 3750), at(2400, 3750), Side.ABOVE).of("trailers.bunk-house"));
        draft.dimension(
                Dimension.upright(at(-3600, -1200), at(-3600, 1200), Side.LEFT).tolerated("±3"));
        draft.dimension(Dimension.upright(at(-3600, 1200), at(-3600, 1350), Side.LEFT));
        draft.dimension(Dimension.upright(at(-3600, 1350), at(-3600, 3750), Side.LEFT));
        draft.dimension(
                Dimension.upright(at(-3600, -1200), at(-3600, 3750), Side.LEFT).worded("(<>)"));
        draft.dimension(
                Dimension.upright(at(1150, -350), at(1150, 350), Side.RIGHT).of("units.cooler"));
        draft.dimension(Dimension.upright(at(3600, -1200), at(1150, -350), Side.RIGHT));
        draft.dimension(
                Dimension.straight(at(-3600, -1200), at(2400, 3750), Side.ABOVE).worded("(<>)"));
        draft.running(RunningDimension.from(
                at(-3600, 3750),
                List.of(at(-2900, 3750), at(-2820, 3750), at(-2770, 3750), at(-1000, 3750), at(400, 3750)),
                Side.ABOVE));
        draft.cuttingPlane("A", at(925, -1200), at(925, 3750), Side.LEFT);
        draft.name("wet lab", "trailers.wet-lab", at(-1500, 300));
        draft.name("bunk house", "trailers.bunk-house", at(-1500, 2800));
        draft.name("cooler", "units.cooler", at(925, 100));
        draft.name("bench", "fixtures.bench", at(-2300, -800));
        draft.name("drain Ø50", "lines.drain", at(925, -900));
        draft.flag(1, "fit.clearance.cooler.roof", at(925, 0), at(925, 13.5), "units.cooler");
        return draft;
    }

    private static void shell(ViewDraft draft, String part, double x, double y, double wide, double high) {
        var outer = box(x, y, wide, high);
        var lining = box(x + 18, y + 18, wide - 36, high - 36);
        var inner = box(x + 58, y + 58, wide - 116, high - 116);
        draft.cutAreaWithHoles(Material.PLY, part, List.of(outer, lining));
        draft.cutAreaWithHoles(Material.WOOL, part, List.of(lining, inner));
        draft.outline(Layer.STRUCTURE.pen().of(part), outer);
        draft.outline(Layer.LININGS.pen().of(part), lining);
        draft.outline(Layer.STRUCTURE.pen().wide(Pen.WIDE_MM).of(part), inner);
    }

    public static ViewDraft sectionDraft() {
        var draft = ViewDraft.named("section-a", "Section A–A")
                .cutAt("cut through the cooler, looking to the rear")
                .scaled(Scale.oneTo(10), Scale.oneTo(50));
        var outer = List.of(at(-1200, 0), at(1200, 0), at(1200, 2300), at(0, 2450), at(-1200, 2300));
        var inner = List.of(at(-1140, 60), at(1140, 60), at(1140, 2250), at(0, 2392), at(-1140, 2250));
        draft.cutAreaWithHoles(Material.FOAM, "trailers.wet-lab", List.of(outer, inner));
        draft.outline(Layer.STRUCTURE.pen().of("trailers.wet-lab"), outer);
        draft.outline(Layer.STRUCTURE.pen().wide(Pen.WIDE_MM).of("trailers.wet-lab"), inner);
        draft.cutArea(Material.PLY, "cavities.lobby", box(-1140, 2080, 2280, 12));
        draft.outline(Layer.LININGS.pen().of("cavities.lobby"), box(-1140, 2080, 2280, 12));
        draft.cutArea(Material.TIMBER, "fixtures.rail", box(-400, 2092, 45, 45));
        draft.outline(Layer.FIXTURES.pen().of("fixtures.rail"), box(-400, 2092, 45, 45));
        draft.outline(Layer.UNITS.pen().cut().of("units.cooler"), box(-350, 2110, 700, 200));
        draft.dimension(Dimension.level(at(-1200, 0), at(1200, 0), Side.BELOW));
        draft.dimension(Dimension.level(at(-350, 2110), at(350, 2110), Side.BELOW));
        draft.dimension(Dimension.upright(at(-1200, 0), at(-1200, 2300), Side.LEFT));
        draft.dimension(Dimension.upright(at(-1140, 60), at(-1140, 2080), Side.LEFT));
        draft.dimensions(
                Dimension.chain(List.of(at(1140, 2080), at(1140, 2092), at(350, 2110), at(350, 2310)), Side.RIGHT));
        draft.dimensions(
                Dimension.parallel(at(1200, 0), List.of(at(1140, 60), at(1200, 2300), at(0, 2450)), Side.RIGHT));
        draft.name("cooler", "units.cooler", at(0, 2210));
        draft.flag(1, "fit.clearance.cooler.roof", at(-350, 2310), at(-350, 2340), "units.cooler");
        draft.name("lowered ceiling, ply 12", "cavities.lobby", at(700, 2086));
        draft.name("wet lab", "trailers.wet-lab", at(0, 1100));
        return draft;
    }

    public static ViewDraft detailDraft() {
        var draft = ViewDraft.named("detail-1", "Detail: cooler to roof").scaled(Scale.oneTo(2), Scale.oneTo(5));
        var lining = new ArrayList<>(box(0, 100, 120, 25));
        draft.cutArea(Material.FOAM, "cavities.lobby", lining);
        draft.outline(Layer.LININGS.pen().of("cavities.lobby"), lining);
        draft.outline(Layer.UNITS.pen().cut().of("units.cooler"), box(20, 20, 80, 66.5));
        draft.dimensions(Dimension.chain(List.of(at(100, 20), at(100, 86.5), at(120, 100), at(120, 125)), Side.RIGHT));
        draft.dimension(Dimension.level(at(20, 20), at(100, 20), Side.BELOW));
        draft.name("ø é – 換気 <script> & \u0007 end", "units.cooler", at(60, 50));
        draft.flag(1, "fit.clearance.cooler.roof", at(60, 86.5), at(60, 100), "units.cooler");
        return draft;
    }
}
