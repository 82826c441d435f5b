package org.spile.exporters.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Material;
import org.spile.exporters.drawing.PaperSize;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.StationSheets;
import org.spile.exporters.drawing.TitleBlock;

class SheetLayoutTest {
    private static final TitleBlock BLOCK = TitleBlock.of("Saltmarsh, plan", "general arrangement", "SM-01");

    private static ViewDraft room(String name, double wide, double high) {
        var corners = Extent.ofSize(0, 0, wide, high).corners();
        return ViewDraft.named(name, "Room " + name)
                .outline(Layer.STRUCTURE.pen(), corners)
                .cutArea(
                        Material.TIMBER,
                        "rooms.bunk",
                        Extent.ofSize(0, 0, wide, high / 10).corners())
                .dimension(Dimension.level(corners.get(0), corners.get(1), Side.BELOW))
                .dimension(Dimension.upright(corners.get(0), corners.get(3), Side.LEFT));
    }

    @Test
    void stationSheets_haveNoClash() {
        for (var sheet : StationSheets.set().sheets()) {
            assertEquals(List.of(), Overlaps.of(sheet), sheet.name());
        }
    }

    @Test
    void smallThings_goOnSmallPaper() {
        var laid = SheetLayout.named("plan", BLOCK).view(room("a", 1600, 900)).lay();
        var sheet = assertInstanceOf(Laid.Fits.class, laid).sheet();
        assertEquals(PaperSize.A4, sheet.paper());
        assertEquals("1:20", sheet.scales());
    }

    @Test
    void aHouse_goesOnA3AtTheNextScale_orOnLargerPaperIfThatIsDemanded() {
        var house = room("a", 7200, 2400);
        var a3 = assertInstanceOf(
                        Laid.Fits.class,
                        SheetLayout.named("plan", BLOCK)
                                .view(house)
                                .on(PaperSize.A3)
                                .lay())
                .sheet();
        assertEquals("1:20", a3.scales(), "7200 at 1:20 is 360: it fits between A3's margins of 390");
        var exact = room("b", 7200, 6000).scaled(Scale.oneTo(20), Scale.oneTo(20));
        var large = assertInstanceOf(
                        Laid.Fits.class,
                        SheetLayout.named("plan", BLOCK).view(exact).lay())
                .sheet();
        assertEquals(PaperSize.A2, large.paper());
    }

    @Test
    void whatCannotFit_isSaidWithAlternatives() {
        var exact = room("a", 72000, 6000).scaled(Scale.oneTo(20), Scale.oneTo(20));
        var laid = SheetLayout.named("plan", BLOCK)
                .view(exact)
                .on(PaperSize.A4, PaperSize.A3)
                .lay();
        var trouble = assertInstanceOf(Laid.TooLarge.class, laid);
        assertTrue(trouble.because().contains("does not fit on A4, A3"), trouble.because());
        assertTrue(
                trouble.alternatives().contains("allow larger paper"),
                trouble.alternatives().toString());
    }

    @Property(tries = 25)
    void randomSheets_haveNoClash(@ForAll long seed) {
        law(seed);
    }

    /** Several rooms of any size, long notes, odd names: whatever fits has no clash. */
    static void law(long seed) {
        var random = new Random(seed);
        var layout = SheetLayout.named("plan", BLOCK.supplemented("Ålesund – ø é 換気 <script> & more".repeat(3)));
        for (var i = 0; i < 1 + random.nextInt(5); i++) {
            var draft = room("v" + i, 200 + random.nextInt(7000), 200 + random.nextInt(4000));
            draft.name("thing " + i, "units.cooler", Vector2D.of(100 * random.nextDouble(), 100));
            layout.view(draft);
        }
        var notes = new ArrayList<String>();
        for (var i = 0; i < random.nextInt(12); i++) {
            notes.add("Check every size on site before cutting. ".repeat(1 + random.nextInt(4)));
        }
        var laid = layout.panel(Panel.numbered("notes", notes)).lay();
        if (laid instanceof Laid.Fits fits) {
            assertEquals(List.of(), Overlaps.of(fits.sheet()), "seed " + seed);
        }
    }
}
