package org.spile.exporters.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.spile.exporters.Readers;
import org.spile.exporters.drawing.Dimensioned;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.SheetSet;
import org.spile.exporters.drawing.StationSheets;

/** Rules of the published format reference for R2000, read back from plain tags; then what independent readers say. */
class DxfWriterTest {

    private record Tag(int code, String value) {}

    private static byte[] bytes(SheetSet set) {
        var out = new ByteArrayOutputStream();
        try {
            new DxfWriter().write(set, out);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return out.toByteArray();
    }

    private static List<Tag> tags() {
        var lines = new String(bytes(StationSheets.set()), Charset.forName("windows-1252"))
                .lines()
                .toList();
        assertEquals(0, lines.size() % 2);
        var tags = new ArrayList<Tag>();
        for (var i = 0; i < lines.size(); i += 2) {
            tags.add(new Tag(Integer.parseInt(lines.get(i)), lines.get(i + 1)));
        }
        return tags;
    }

    private static String header(List<Tag> tags, String name) {
        return tags.get(tags.indexOf(new Tag(9, name)) + 1).value();
    }

    @Test
    void sections_standInOrder_andTheFileEnds() {
        var tags = tags();
        var sections = new ArrayList<String>();
        for (var i = 0; i < tags.size(); i++) {
            if (tags.get(i).equals(new Tag(0, "SECTION"))) {
                sections.add(tags.get(i + 1).value());
            }
        }
        assertEquals(List.of("HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"), sections);
        assertEquals(new Tag(0, "EOF"), tags.get(tags.size() - 1));
        assertEquals(new Tag(9, "$ACADVER"), tags.get(2));
        assertEquals("AC1015", header(tags, "$ACADVER"));
        assertEquals("4", header(tags, "$INSUNITS"));
        assertEquals("1", header(tags, "$MEASUREMENT"));
    }

    @Test
    void handles_areUnique_ownersExist_theSeedIsAboveAll() {
        var tags = tags();
        var handles = new HashSet<String>();
        var owners = new HashSet<String>();
        for (var i = tags.indexOf(new Tag(2, "TABLES")); i < tags.size(); i++) {
            var tag = tags.get(i);
            if (tag.code() == 5 || tag.code() == 105) {
                assertTrue(handles.add(tag.value()), "handle " + tag.value() + " twice");
            } else if (tag.code() == 330 || tag.code() == 350 || tag.code() == 340 || tag.code() == 390) {
                owners.add(tag.value());
            }
        }
        owners.remove("0");
        owners.removeAll(handles);
        assertEquals(new HashSet<String>(), owners);
        var highest = handles.stream().map(handle -> new BigInteger(handle, 16)).max(BigInteger::compareTo);
        assertTrue(new BigInteger(header(tags, "$HANDSEED"), 16).compareTo(highest.orElseThrow()) > 0);
    }

    @Test
    void layers_carryNamesAndWidthsOfTheModel() {
        var tags = tags();
        for (var layer : Layer.values()) {
            var at = tags.indexOf(new Tag(2, layer.words()));
            var width = tags.subList(at, at + 6).stream()
                    .filter(tag -> tag.code() == 370)
                    .findFirst()
                    .orElseThrow();
            assertEquals(Long.toString(Math.round(layer.widthMm() * 100)), width.value(), layer.words());
        }
    }

    @Test
    void text_isInTheCodePage_orEscaped() {
        assertEquals("\u00d8 \u00e9 \u2013", DxfWords.line("Ø é –"));
        assertEquals("\\U+63DB\\U+6C17", DxfWords.line("換気"));
        assertEquals("\\U+25A1", DxfWords.line("😀"), "no escape exists beyond the basic plane");
        assertEquals("100 % %d ^ I", DxfWords.line("100 %%d ^I"));
        assertEquals("a b", DxfWords.line("a\u0007b"));
        assertEquals("\\{x\\} \\\\P", DxfWords.multi("{x} \\P"));
        var text = new String(bytes(StationSheets.set()), Charset.forName("windows-1252"));
        assertTrue(text.contains("ø é – \\U+63DB\\U+6C17 <script> &   end"), "as written in the detail");
        assertFalse(text.contains("\u0007"));
    }

    @Test
    void everyDimension_namesItsBlock_measuresItsPoints_andHoldsNoTypedNumber() {
        var tags = tags();
        var blocks = new HashSet<String>();
        var count = 0;
        for (var i = 0; i < tags.size(); i++) {
            if (tags.get(i).equals(new Tag(100, "AcDbBlockBegin"))) {
                blocks.add(tags.get(i + 1).value());
            }
            if (tags.get(i).equals(new Tag(100, "AcDbDimension"))) {
                count++;
                assertTrue(blocks.contains(tags.get(i + 1).value()));
                var words = tags.subList(i, i + 16).stream()
                        .filter(tag -> tag.code() == 1)
                        .findFirst()
                        .orElseThrow();
                assertTrue(words.value().isEmpty() || words.value().contains("<>"), words.value());
            }
        }
        assertEquals(dimensions().count(), count);
    }

    private static Stream<Dimensioned> dimensions() {
        return StationSheets.set().sheets().stream()
                .flatMap(sheet -> sheet.views().stream())
                .flatMap(view -> view.marks().stream())
                .filter(Dimensioned.class::isInstance)
                .map(Dimensioned.class::cast);
    }

    private static Path file(Path dir) throws IOException {
        return Files.write(dir.resolve("saltmarsh.dxf"), bytes(StationSheets.set()));
    }

    @Test
    void theStrictReader_findsNoFault_andAllThatWasDrawn(@TempDir Path dir) throws Exception {
        var facts = Readers.ezdxf(file(dir));
        assertEquals(
                List.of(),
                facts.stream().filter(fact -> fact.startsWith("fault")).toList());
        var expected = new ArrayList<>(List.of(
                "version AC1015",
                "units 4 1",
                "layout Model",
                "layout plan",
                "layout section-a",
                "layer structure Continuous 70",
                "layer axes long-dashed-dotted 25",
                "attribute ID bunk-grille",
                "attribute FREE_AREA 70 %",
                "arc 700.000000 0.000000 90.000000",
                "data part=units.cooler",
                "viewport plan 50.000000",
                "viewport section-a 20.000000",
                "viewport section-a 5.000000",
                "text drain Ø50",
                "text ø é – 換気 <script> &   end"));
        expected.removeAll(facts);
        assertEquals(List.of(), expected, "not found by the reader");
    }

    @Test
    void theStrictReader_measuresWhatTheModelMeasures(@TempDir Path dir) throws Exception {
        var facts = Readers.ezdxf(file(dir)).stream()
                .filter(fact -> fact.startsWith("dimension "))
                .sorted()
                .toList();
        var expected = dimensions()
                .map(d -> String.format(
                        Locale.ROOT,
                        "dimension %.6f %.6f %s",
                        d.span().measuredMm(),
                        d.span().measuredMm(),
                        d.says()))
                .sorted()
                .toList();
        assertEquals(expected, facts);
    }

    @Test
    void twoMoreReaders_countTheSameEntities(@TempDir Path dir) throws Exception {
        var facts = Readers.javascript(file(dir));
        for (var type : List.of("LINE", "LWPOLYLINE", "CIRCLE", "ARC", "TEXT", "SOLID", "DIMENSION", "INSERT")) {
            var counts = facts.stream()
                    .filter(fact -> fact.contains(" " + type + " "))
                    .map(fact -> fact.substring(fact.lastIndexOf(' ') + 1))
                    .toList();
            assertEquals(2, counts.size(), type);
            assertEquals(counts.get(0), counts.get(1), type);
        }
        assertTrue(facts.contains("dxf DIMENSION " + dimensions().count()), facts.toString());
    }
}
