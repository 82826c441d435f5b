package org.spile.exporters;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.SheetSet;
import org.spile.exporters.drawing.SheetWriter;
import org.spile.exporters.drawing.StationSheets;

/** What every sheet writer keeps to, whatever its format: repeatable bytes, no locale, nothing that is no number. */
class SheetWriterContractTest {

    static Stream<SheetWriter> writers() {
        return Formats.all().stream();
    }

    private static byte[] written(SheetWriter writer) throws IOException {
        var out = new ByteArrayOutputStream();
        for (var set : writer.oneSheetAFile() ? StationSheets.set().single() : List.of(StationSheets.set())) {
            writer.write(set, out);
        }
        return out.toByteArray();
    }

    @Test
    void endings_areLowerCaseAndAllDifferent() {
        var endings = writers().map(SheetWriter::ending).toList();
        assertEquals(endings.size(), endings.stream().distinct().count());
        assertTrue(endings.stream().allMatch(ending -> ending.matches("[a-z0-9]+")), endings.toString());
    }

    @ParameterizedTest
    @MethodSource("writers")
    void theSameSheets_giveTheSameBytes(SheetWriter writer) throws IOException {
        assertArrayEquals(written(writer), written(writer), writer.ending());
    }

    @ParameterizedTest
    @MethodSource("writers")
    void noLocale_changesAByte(SheetWriter writer) throws IOException {
        var before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.ROOT);
            var plain = written(writer);
            for (var tag : List.of("de-DE", "ar-EG-u-nu-arab", "tr-TR")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertArrayEquals(plain, written(writer), writer.ending() + " in " + tag);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @MethodSource("writers")
    void nothingIsNoNumber_norWrittenWithAnExponent(SheetWriter writer) throws IOException {
        var text = new String(written(writer), StandardCharsets.ISO_8859_1);
        assertFalse(Pattern.compile("\\bNaN\\b|\\bInfinity\\b").matcher(text).find(), writer.ending());
        assertFalse(
                Pattern.compile("\\d[eE][-+]\\d|\\.\\d+[eE]\\d").matcher(text).find(), writer.ending());
        assertFalse(text.contains("-0\n") || text.contains("\"-0\""), writer.ending());
    }

    @ParameterizedTest
    @MethodSource("writers")
    void layersAndParts_areNamedAsInTheHouseFile(SheetWriter writer) throws IOException {
        var text = new String(written(writer), StandardCharsets.ISO_8859_1);
        for (var layer : List.of(Layer.STRUCTURE, Layer.UNITS, Layer.DIMENSIONS, Layer.FINDINGS)) {
            assertTrue(text.contains(layer.words()), writer.ending() + " " + layer.words());
        }
        assertTrue(text.contains("units.cooler"), writer.ending());
    }

    @ParameterizedTest
    @MethodSource("writers")
    void theStreamIsNotClosed_andItsTroublePassedOn(SheetWriter writer) throws IOException {
        var set = new SheetSet("one", List.of(StationSheets.plan()));
        writer.write(set, new OutputStream() {
            @Override
            public void write(int one) {}

            @Override
            public void close() {
                throw new IllegalStateException("closed");
            }
        });
        assertThrows(
                IOException.class,
                () -> writer.write(set, new OutputStream() {
                    private int room = 1000;

                    @Override
                    public void write(int one) throws IOException {
                        if (room-- == 0) {
                            throw new IOException("no space left");
                        }
                    }
                }));
    }
}
