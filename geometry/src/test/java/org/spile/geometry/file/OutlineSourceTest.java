package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan.dxf} was written by python3-ezdxf 0.18.1; areas of its shapes are closed forms. */
class OutlineSourceTest {
    private static final String SQUARE = line("0", "0", "900", "0")
            + line("900", "0", "900", "500")
            + line("900", "500", "0", "500")
            + line("0", "500", "0", "0");
    private static final String HEAD =
            "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n";
    private static final String FOOT = "0\nENDSEC\n0\nEOF\n";

    @TempDir
    Path top;

    private Path folder;

    @BeforeEach
    void lay() throws IOException {
        folder = Files.createDirectory(top.resolve("house"));
        try (InputStream plan = OutlineSourceTest.class.getResourceAsStream("plan.dxf")) {
            Files.copy(plan, folder.resolve("plan.dxf"));
        }
    }

    @Test
    void closedPolylines() {
        List<Vector2D> bunks = taken("plan.dxf", "BUNKS", "");
        assertEquals(
                "[(1980.0, 900.0), (2600.0, 900.0), (2600.0, 0.0), (3980.0, 0.0), (3980.0, 2260.0), (1980.0, 2260.0)]",
                bunks.toString());
        assertEquals(2000 * 2260 - 620 * 900, area(bunks), 1e-6);
        assertEquals(bunks, taken("plan.dxf", "bunks", ""));
    }

    /** An arc flattened with chords that leave it by 0.05 mm at most loses at most that times its length. */
    @Test
    void curves_becomeCornersOnThem() {
        curved("SLOT", 400 * 200 + Math.PI * 100 * 100, Math.PI * 200);
        curved("OLD", 300 * 200 - (1 - Math.PI / 4) * 100 * 100, Math.PI * 50);
        curved("DOOR", 100 * 50 + Math.PI * 50 * 50 / 2, Math.PI * 50);
        curved("ROUND", Math.PI * 250 * 250, Math.PI * 500);
        for (Vector2D corner : taken("plan.dxf", "ROUND", "")) {
            assertEquals(250, corner.distance(Vector2D.of(1000, 500)), 1e-9);
        }
    }

    private void curved(String layer, double area, double arcLength) {
        double taken = area(taken("plan.dxf", layer, ""));
        assertTrue(taken <= area + 1e-6 + 0.004 * 100, layer + " " + taken + " of " + area);
        assertTrue(taken >= area - arcLength * Arc.SAGITTA_MM - 0.004 * 100, layer + " " + taken + " of " + area);
    }

    @Test
    void drawnFromBelow_isTurnedOver() {
        assertEquals(
                "[(-200.0, 0.0), (0.0, 0.0), (0.0, 50.0), (-200.0, 100.0)]",
                taken("plan.dxf", "BELOW", "").toString());
    }

    @Test
    void looseLines_inAnyOrderAndTurn() throws IOException {
        write("box.dxf", HEAD + SQUARE + SQUARE + FOOT);
        assertEquals(
                "[(0.0, 0.0), (900.0, 0.0), (900.0, 500.0), (0.0, 500.0)]",
                taken("box.dxf", "", "").toString());
        write("box.dxf", (HEAD + SQUARE + FOOT).replace("\n", "\r\n"));
        assertEquals(450_000, area(taken("box.dxf", "BOX", "")), 1e-9);
        String near = SQUARE.replace(line("900", "500", "0", "500"), line("900.009", "500", "0", "500"));
        write("box.dxf", HEAD + near + FOOT);
        assertEquals(4, taken("box.dxf", "BOX", "").size());
    }

    @Test
    void units() throws IOException {
        write(
                "box.dxf",
                (HEAD + SQUARE + FOOT)
                        .replace("$INSUNITS\n70\n4", "$INSUNITS\n70\n1")
                        .replace("900", "30")
                        .replace("500", "20"));
        assertEquals("(762.0, 508.0)", taken("box.dxf", "BOX", "").get(2).toString());
        assertEquals("(30.0, 20.0)", taken("box.dxf", "BOX", "mm").get(2).toString());
        write("box.dxf", (HEAD + SQUARE + FOOT).replace("$INSUNITS\n70\n4", "$INSUNITS\n70\n0"));
        refused(
                "box.dxf",
                "BOX",
                "",
                "",
                "box.dxf: it says no unit ($INSUNITS is missing or 0). State it beside the file's name: unit: mm.");
        assertEquals("(9000.0, 5000.0)", taken("box.dxf", "BOX", "cm").get(2).toString());
        write("box.dxf", (HEAD + SQUARE + FOOT).replace("$INSUNITS", "$LUNITS"));
        refused(
                "box.dxf",
                "BOX",
                "",
                "",
                "box.dxf: it says no unit ($INSUNITS is missing or 0). State it beside the file's name: unit: mm.");
        write("box.dxf", (HEAD + SQUARE + FOOT).replace("$INSUNITS\n70\n4", "$INSUNITS\n70\n7"));
        refused(
                "box.dxf",
                "BOX",
                "",
                "",
                "box.dxf: its unit ($INSUNITS 7) is not one that houses are drawn in. State the unit of its numbers: unit: mm.");
        write("box.dxf", (HEAD + SQUARE + FOOT).replace("$INSUNITS\n70\n4", "$INSUNITS\n70\n6"));
        refused(
                "box.dxf",
                "BOX",
                "",
                "",
                "box.dxf: the shape reaches beyond 100 m. Is the unit right? State it: unit: mm.");
        write("box.dxf", (HEAD + SQUARE + FOOT).replace("900", "0.9").replace("500", "0.5"));
        refused(
                "box.dxf",
                "BOX",
                "",
                "",
                "box.dxf: the shape is less than 1 mm across. Is the unit right? State it: unit: m.");
    }

    @Test
    void layersAndShapes_thatCantBeChosen() throws IOException {
        refused("plan.dxf", "BUNK", "", "", "plan.dxf: it has no layer \"BUNK\". Nearest: \"BUNKS\".");
        refused(
                "plan.dxf",
                "GALLEY",
                "",
                "",
                "plan.dxf: it has no layer \"GALLEY\". It has 0, BELOW, BUNKS, CURVE, DOOR, Defpoints ...");
        refused(
                "plan.dxf",
                "",
                "",
                "",
                "plan.dxf: it has lines on several layers: BELOW, BUNKS, DOOR, OLD, OPEN, ROUND ... Name one: layer: BELOW.");
        refused(
                "plan.dxf",
                "NOTES",
                "",
                "",
                "plan.dxf: layer \"NOTES\" holds no lines. Draw the shape with polylines.");
        refused(
                "plan.dxf",
                "CURVE",
                "",
                "",
                "plan.dxf: layer \"CURVE\" holds no lines but ELLIPSE, which is not read. Draw the shape with polylines.");
        refused(
                "plan.dxf",
                "SEVERAL",
                "",
                "",
                "plan.dxf: layer \"SEVERAL\" holds 2 closed shapes. Put the one meant on a layer of its own.");
        refused(
                "plan.dxf",
                "OPEN",
                "",
                "",
                "plan.dxf: layer \"OPEN\" holds no closed shape; a gap of 1 mm lies between [100, 50] and [99, 50]. Close it, or join its lines.");
        write("line.dxf", HEAD + line("0", "0", "900", "0") + FOOT);
        refused(
                "line.dxf",
                "BOX",
                "",
                "",
                "line.dxf: layer \"BOX\" holds no closed shape; a gap of 900 mm lies between [0, 0] and [900, 0]. Close it, or join its lines.");
        write("none.dxf", HEAD + FOOT);
        refused("none.dxf", "", "", "", "none.dxf: no line is drawn in it. Is it the right file?");
        write("slant.dxf", HEAD + "0\nCIRCLE\n8\nBOX\n10\n0\n20\n0\n40\n50\n210\n1\n220\n0\n230\n0\n" + FOOT);
        refused("slant.dxf", "", "", "", "slant.dxf: a CIRCLE on layer BOX is drawn on a slant. Draw it in plan.");
    }

    @Test
    void brokenDxf() throws IOException {
        broken(
                "house\n",
                "line 1: \"house\" stands where a DXF group code must. The file is damaged or no DXF text; save it anew.");
        broken("", "it ends in line 0 without EOF. The file is cut short; save it anew.");
        broken(HEAD + SQUARE, "it ends in line 62 without EOF. The file is cut short; save it anew.");
        broken(HEAD + SQUARE + "0\nEOF\n", "its ENTITIES section has no end. The file is cut short; save it anew.");
        broken(HEAD + "0\n", "it ends in line 15 without EOF. The file is cut short; save it anew.");
        broken(
                "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nEOF\n",
                "it has no ENTITIES section: nothing is drawn in it. Is it the right file?");
        broken(
                HEAD + SQUARE.replace("900", "9oo") + FOOT,
                "line 24: \"9oo\" is no number. The file is damaged; save it anew.");
        broken(
                HEAD + SQUARE.replace("900", "NaN") + FOOT,
                "line 24: \"NaN\" is no number. The file is damaged; save it anew.");
        broken(
                HEAD + SQUARE.replace("900", "1e300") + FOOT,
                "a corner lies beyond any house. Is the unit right? State it: unit: mm.");
        broken(
                HEAD + "0\nLINE\n8\nBOX\n10\n0\n" + FOOT,
                "the LINE before line 17 lacks its group 20. Save the file anew.");
        broken(
                HEAD + "0\nLWPOLYLINE\n8\nBOX\n42\n1\n" + FOOT,
                "line 19: a bulge before any corner. Save the file anew.");
        broken("a\u0000b", "line 1: This is not a text file. Save it as plain text in UTF-8.");
        Files.write(
                folder.resolve("latin.dxf"),
                (HEAD + SQUARE.replace("BOX", "K\u00dcCHE") + FOOT).getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(4, taken("latin.dxf", "K\u00dcCHE", "").size());
    }

    @Test
    void geoJson() throws IOException {
        String box = "{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[0,500],[900,500],[900,0],[0,0]]]}";
        write(
                "lab.geojson",
                "{\"type\":\"FeatureCollection\",\"features\":["
                        + "{\"type\":\"Feature\",\"id\":\"bench\",\"properties\":{},\"geometry\":" + box + "},"
                        + "{\"type\":\"Feature\",\"properties\":{\"name\":\"sink\"},\"geometry\":"
                        + box.replace("900", "600") + "},"
                        + "{\"type\":\"Feature\",\"id\":7,\"properties\":null,\"geometry\":null}]}");
        assertEquals(
                "[(0.0, 0.0), (900.0, 0.0), (900.0, 500.0), (0.0, 500.0)]",
                takenId("lab.geojson", "bench", "mm").toString());
        assertEquals(600 * 25.4, takenId("lab.geojson", "sink", "in").get(1).getX(), 1e-9);
        refused("lab.geojson", "", "7", "mm", "lab.geojson: the feature has no geometry. Draw a Polygon.");
        refused("lab.geojson", "", "bensh", "mm", "lab.geojson: it has no feature \"bensh\". Nearest: \"bench\".");
        refused("lab.geojson", "", "stove", "mm", "lab.geojson: it has no feature \"stove\". Its ids: bench, sink, 7.");
        refused(
                "lab.geojson",
                "",
                "",
                "mm",
                "lab.geojson: it has 3 features; ids: bench, sink, 7. Name one: id: its id.");
        refused(
                "lab.geojson",
                "",
                "bench",
                "",
                "lab.geojson: this kind of drawing says no unit of length. State it beside the file's name: unit: mm.");
        json(box.replace("[900,500]", "[900,500,3]"), "[(0.0, 0.0), (900.0, 0.0), (900.0, 500.0), (0.0, 500.0)]");
        json(
                box.replace("Polygon", "MultiPolygon").replace("[[[", "[[[[").replace("]]]", "]]]]"),
                "[(0.0, 0.0), (900.0, 0.0), (900.0, 500.0), (0.0, 500.0)]");
        json(
                "{\"type\":\"LineString\",\"coordinates\":[[0,0],[900,0],[900,500],[0,0]]}",
                "[(0.0, 0.0), (900.0, 0.0), (900.0, 500.0)]");
        json(
                "{\"type\":\"LineString\",\"coordinates\":[[0,0],[900,0],[900,500],[0,2]]}",
                "s.json: the shape is open; a gap of 2 mm lies between [0, 2] and [0, 0]. Close it.");
    }

    @Test
    void geoJson_thatIsNone() throws IOException {
        String box = "{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[0,500],[900,500],[900,0],[0,0]]]}";
        json(
                "{\"type\": ",
                "s.json: line 1, column 10: this is no JSON: Unexpected end-of-input within/between O... Save the file anew.");
        json(
                "house",
                "s.json: line 1, column 1: this is no JSON: Unrecognized token 'house': was expectin... Save the file anew.");
        json(
                "{\"a\":1,\"a\":2}",
                "s.json: line 1, column 11: this is no JSON: Duplicate field 'a'. Save the file anew.");
        json(
                "[".repeat(5000),
                "s.json: this is no JSON: Document nesting depth (65) exceeds the ... Save the file anew.");
        json("{}", "s.json: this is no GeoJSON: it has no \"type\". A FeatureCollection, a Feature or a Polygon is.");
        json(
                "{\"type\":\"Topology\"}",
                "s.json: a \"Topology\" is not read. A FeatureCollection, a Feature or a Polygon is.");
        json(
                "{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\",\"coordinates\":[1,2]}}",
                "s.json: a \"Point\" bounds nothing. Draw a Polygon.");
        json("{\"type\":\"Polygon\"}", "s.json: its coordinates are no list of positions. Draw it anew.");
        json(box.replace("[0,500]", "[0]"), "s.json: \"[0]\" is no position. A position is two numbers.");
        json(box.replace("[0,500]", "[0,\"5\"]"), "s.json: \"[0,\"5\"]\" is no position. A position is two numbers.");
        json(
                box.replace("[0,500]", "[0,1e999]"),
                "s.json: \"[0,\"Infinity\"]\" is no position. A position is two numbers.");
        json(
                box.replace("]]]", "]],[[1,1],[1,2],[2,2],[1,1]]]"),
                "s.json: the shape has a hole. An outline has none: draw its rim only.");
        json(
                box.replace("[900,0],[0,0]", "[900,0]"),
                "s.json: the shape is open: it begins at [0,0] and ends at [900,0]. End it where it begins, after three corners or more.");
        json(
                "{\"type\":\"Polygon\",\"coordinates\":[[[9.93,53.55],[9.9301,53.55],[9.9301,53.5501],[9.93,53.55]]]}",
                "? s.json: its numbers look like degrees of longitude and latitude (9.93, 53.55). Project it to lengths; a plan in metres spans more than 0.02.");
    }

    @Test
    void wellKnownText() throws IOException {
        write("s.wkt", "POLYGON ((0 0, 900 0, 900 500, 0 500, 0 0))\n");
        assertEquals(450_000, area(taken("s.wkt", "", "mm")), 1e-9);
        write("s.wkt", "LINESTRING (0 0, 0.9 0, 0.9 0.5, 0 0)");
        assertEquals(225_000, area(taken("s.wkt", "", "m")), 1e-6);
        write("s.wkt", "MULTIPOLYGON (((0 0, 9 0, 9 5, 0 0)), ((10 0, 19 0, 19 5, 10 0)))");
        refused("s.wkt", "", "", "mm", "s.wkt: it holds 2 closed shapes. Keep the one meant.");
        write("s.wkt", "POLYGON EMPTY");
        refused("s.wkt", "", "", "mm", "s.wkt: the shape has no corners. Is it the right one?");
        write("s.wkt", "POLYGON ((0 0, 900 0");
        refused(
                "s.wkt",
                "",
                "",
                "mm",
                "s.wkt: it is no well-known text: Expected word but found End-of-Stream (l... Write POLYGON ((0 0, ...)).");
        write("s.wkt", "GEOMETRYCOLLECTION(".repeat(100_000));
        refused(
                "s.wkt",
                "",
                "",
                "mm",
                "s.wkt: \"GEOMETRYCOLLECTION(GEOMETRYCOLLECTION(GE...\" is no shape of well-known text. Write POLYGON ((0 0, ...)).");
    }

    @Test
    void files_outsideTheFolder() throws IOException {
        String outside = "it is not in the house file's folder or one below it. Put the drawing beside the house file.";
        Files.writeString(top.resolve("secret.dxf"), HEAD + SQUARE + FOOT);
        Files.createDirectory(folder.resolve("plans"));
        write("plans/box.dxf", HEAD + SQUARE + FOOT);
        Files.createSymbolicLink(folder.resolve("link.dxf"), top.resolve("secret.dxf"));
        Files.createSymbolicLink(folder.resolve("up"), top);
        Files.createSymbolicLink(folder.resolve("inner.dxf"), folder.resolve("plans/box.dxf"));
        assertEquals(4, taken("plans/box.dxf", "", "").size());
        assertEquals(4, taken("plans/../plans/box.dxf", "", "").size());
        assertEquals(4, taken("inner.dxf", "", "").size());
        refused("../secret.dxf", "", "", "", "../secret.dxf: " + outside);
        refused("plans/../../secret.dxf", "", "", "", "plans/../../secret.dxf: " + outside);
        refused("../house/plan.dxf.x/../../secret.dxf", "", "", "", "../house/plan.dxf.x/../../secret.dxf: " + outside);
        refused("link.dxf", "", "", "", "link.dxf: " + outside);
        refused("up/secret.dxf", "", "", "", "up/secret.dxf: " + outside);
        refused(top.resolve("secret.dxf").toString(), "", "", "", top.resolve("secret.dxf") + ": " + outside);
        refused(" ", "", "", "", " : " + outside);
        refused("a\u0000b.dxf", "", "", "", "a\u0000b.dxf: this is no file's name. Write a name such as plan.dxf.");
    }

    @Test
    void files_thatArentThere() throws IOException {
        refused("plans.dxf", "", "", "", "plans.dxf: There is no such file. Nearest: \"plan.dxf\".");
        Files.createDirectory(folder.resolve("dir.dxf"));
        refused("dir.dxf", "", "", "", "dir.dxf: This is a folder. Name a file in it.");
        write("plan.svg", "<svg/>");
        refused(
                "plan.svg",
                "",
                "",
                "",
                "plan.svg: this kind of drawing is not read. Save it as .dxf, .geojson or .wkt.");
        try (var large = new RandomAccessFile(folder.resolve("large.dxf").toFile(), "rw")) {
            large.setLength(50L * 1024 * 1024);
        }
        refused("large.dxf", "", "", "", "large.dxf: This file is larger than 8 MiB. No house needs so much.");
    }

    private static String line(String x, String y, String toX, String toY) {
        List<String> groups = List.of("0", "LINE", "8", "BOX", "10", x, "20", y, "11", toX, "21", toY);
        return String.join("\n", groups) + "\n";
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private void broken(String text, String says) throws IOException {
        write("broken.dxf", text);
        refused("broken.dxf", "", "", "", "broken.dxf: " + says);
    }

    private void json(String text, String result) throws IOException {
        write("s.json", text);
        assertEquals(result, shown(read("s.json", "", "", "mm")));
    }

    private List<Vector2D> taken(String from, String layer, String unit) {
        return corners(read(from, layer, "", unit));
    }

    private List<Vector2D> takenId(String from, String id, String unit) {
        return corners(read(from, "", id, unit));
    }

    private static List<Vector2D> corners(OutlineSource.Result result) {
        if (result instanceof OutlineSource.Taken taken) {
            return taken.cornersMm();
        }
        throw new AssertionError(shown(result));
    }

    private void refused(String from, String layer, String id, String unit, String says) {
        assertEquals(says, shown(read(from, layer, id, unit)));
    }

    private OutlineSource.Result read(String from, String layer, String id, String unit) {
        return new OutlineSource(folder).read(new DrawnShape.Drawn(from, layer, id, unit));
    }

    private static String shown(OutlineSource.Result result) {
        return result instanceof OutlineSource.Refused refused
                ? (refused.doubt() ? "? " : "") + refused.says() + " " + refused.advice()
                : ((OutlineSource.Taken) result).cornersMm().toString();
    }

    private static double area(List<Vector2D> corners) {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            sum += corners.get(i).signedArea(corners.get((i + 1) % corners.size()));
        }
        return sum / 2;
    }
}
