package org.spile.exporters.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.spile.exporters.Readers;
import org.spile.exporters.drawing.Arc;
import org.spile.exporters.drawing.Extent;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.PaperSize;
import org.spile.exporters.drawing.Polyline;
import org.spile.exporters.drawing.Projection;
import org.spile.exporters.drawing.Scale;
import org.spile.exporters.drawing.Sheet;
import org.spile.exporters.drawing.SheetSet;
import org.spile.exporters.drawing.StationSheets;
import org.spile.exporters.drawing.Text;
import org.spile.exporters.drawing.TitleBlock;
import org.spile.exporters.drawing.Vertex;
import org.spile.exporters.drawing.View;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SvgWriterTest {
    private static final int DPI = 254;
    private static final double PIXELS_PER_MM = 10;

    private static byte[] written(Sheet sheet) throws IOException {
        var out = new ByteArrayOutputStream();
        new SvgWriter().write(new SheetSet("Saltmarsh", List.of(sheet)), out);
        return out.toByteArray();
    }

    private static Document parsed(Sheet sheet) throws Exception {
        var factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(written(sheet)));
    }

    private static List<Element> elements(Document document, String name) {
        var found = new ArrayList<Element>();
        var nodes = document.getElementsByTagName(name);
        for (var i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }

    private static Sheet sheet(Mark... marks) {
        var view = new View(
                "check",
                "Check",
                Scale.oneTo(20),
                Extent.ofSize(-100, -100, 2200, 2200),
                Vector2D.of(40, 100),
                List.of(marks),
                true);
        return new Sheet(
                "check",
                PaperSize.A3,
                TitleBlock.of("", "", ""),
                Projection.FIRST_ANGLE,
                1,
                1,
                List.of(view),
                List.of());
    }

    @Test
    void sheets_areOfTrueSize_oneUserUnitAMillimetre() throws Exception {
        var root = parsed(StationSheets.plan()).getDocumentElement();
        assertEquals("420mm", root.getAttribute("width"));
        assertEquals("297mm", root.getAttribute("height"));
        assertEquals("0 0 420 297", root.getAttribute("viewBox"));
        assertEquals("img", root.getAttribute("role"));
    }

    @Test
    void ids_neverRepeat() throws Exception {
        var document = parsed(StationSheets.section());
        var ids = new HashSet<String>();
        for (var element : elements(document, "*")) {
            if (element.hasAttribute("id")) {
                assertTrue(ids.add(element.getAttribute("id")), element.getAttribute("id"));
            }
        }
        assertTrue(ids.contains("view-section-a-units-units-cooler"), ids.toString());
    }

    @Test
    void layers_lieInTheirOrder() throws Exception {
        var layers = elements(parsed(StationSheets.plan()), "g").stream()
                .filter(group -> group.getAttribute("id").startsWith("view-plan-"))
                .map(group -> group.getAttribute("data-layer"))
                .filter(name -> !name.isEmpty())
                .toList();
        var order = List.of(Layer.values()).stream().map(Layer::words).toList();
        assertEquals(order.stream().filter(layers::contains).toList(), layers);
        assertTrue(layers.size() > 8, layers.toString());
    }

    @Test
    void usersWords_areWordsOnly() throws Exception {
        var says = "ø é – 換気 <script>alert(1)</script> & \"x\" ]]> \u0007\u0000 end";
        var document = parsed(sheet(
                Polyline.rectangle(Layer.UNITS.pen().of("units.<b>&\u0001"), Extent.ofSize(0, 0, 2000, 2000)),
                Text.of(Layer.NOTES.pen(), Vector2D.of(10, 10), says)));
        assertEquals(0, elements(document, "script").size());
        assertTrue(elements(document, "text").stream()
                .anyMatch(
                        text -> text.getTextContent().equals("ø é – 換気 <script>alert(1)</script> & \"x\" ]]>    end")));
        assertTrue(elements(document, "g").stream()
                .anyMatch(g -> g.getAttribute("data-part").equals("units.<b>& ")));
    }

    @Test
    void dimensions_keepTheirMeasuredValue() throws Exception {
        var values = elements(parsed(StationSheets.plan()), "g").stream()
                .map(group -> group.getAttribute("data-mm"))
                .filter(value -> !value.isEmpty())
                .toList();
        assertTrue(values.containsAll(List.of("7200", "6000", "2400", "150", "450")), values.toString());
    }

    @Test
    void severalSheetsInOneFile_areRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new SvgWriter().write(StationSheets.set(), new ByteArrayOutputStream()));
    }

    /** Drawn by librsvg at 10 pixels a millimetre: 2000 at 1:20 is 100 on paper, 1000 pixels, to 0.1 %. */
    @Test
    void checkSquare_measuresAHundredMillimetresWhenDrawn(@TempDir Path dir) throws Exception {
        var square = Polyline.rectangle(Layer.UNITS.pen(), Extent.ofSize(0, 0, 2000, 2000));
        var image = drawn(sheet(square), dir);
        assertEquals(4200, image.getWidth(), 1);
        assertEquals(2970, image.getHeight(), 1);
        // The view's corner stands at 40, 100 and the square 100 model millimetres (5 on paper) inside it.
        var left = darkMiddle(image, 300, 1200, (int) ((297 - 155) * PIXELS_PER_MM), true);
        var right = darkMiddle(image, 1200, 1700, (int) ((297 - 155) * PIXELS_PER_MM), true);
        var top = darkMiddle(image, 700, 1400, (int) (95 * PIXELS_PER_MM), false);
        var bottom = darkMiddle(image, 1400, 2200, (int) (95 * PIXELS_PER_MM), false);
        assertEquals(1000, right - left, 1);
        assertEquals(1000, bottom - top, 1);
        assertEquals(45 * PIXELS_PER_MM, left, 1);
        assertEquals((297 - 105) * PIXELS_PER_MM, bottom, 1);
    }

    /** A half circle that bulges up, drawn as a bent polyline and as an arc, must be dark at its crown, not below. */
    @Test
    void bends_turnTheRightWayWhenDrawn(@TempDir Path dir) throws Exception {
        var up = new Polyline(
                Layer.UNITS.pen(), List.of(new Vertex(Vector2D.of(1000, 1000), 1), Vertex.of(0, 1000)), false);
        var image = drawn(sheet(up), dir);
        assertEquals((297 - 105 - 75) * PIXELS_PER_MM, darkMiddle(image, 900, 1900, 700, false), 1.5);
        var arc = new Arc(Layer.UNITS.pen(), Vector2D.of(500, 1000), 500, 180, 180);
        var below = drawn(sheet(arc), dir);
        assertEquals((297 - 105 - 25) * PIXELS_PER_MM, darkMiddle(below, 900, 1900, 700, false), 1.5);
    }

    private static BufferedImage drawn(Sheet sheet, Path dir) throws IOException, InterruptedException {
        var svg = dir.resolve("check.svg");
        var png = dir.resolve("check.png");
        Files.write(svg, written(sheet));
        Readers.draw(svg, DPI, png);
        return ImageIO.read(png.toFile());
    }

    /** Middle of the dark pixels between two bounds on one row or column. */
    private static double darkMiddle(BufferedImage image, int from, int to, int across, boolean level) {
        var weight = 0.0;
        var sum = 0.0;
        for (var i = from; i < to; i++) {
            var rgb = level ? image.getRGB(i, across) : image.getRGB(across, i);
            var dark = 255 - (rgb & 0xFF);
            weight += dark;
            sum += dark * (i + 0.5);
        }
        assertTrue(weight > 255, "nothing dark there");
        return sum / weight;
    }
}
