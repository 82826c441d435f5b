package org.spile.exporters.table;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.spile.analysis.finding.Summary;
import org.spile.analysis.finding.Verdict;

/**
 * A report as one JSON object (RFC 8259), in the form that {@code docs/reference/findings.schema.json} describes.
 *
 * <p>Members always stand in the same order and none is ever left out; what isn't there is {@code null} or an empty list.
 * Numbers are rounded to a millionth of their unit.
 */
public final class ReportJson {
    private ReportJson() {}

    /**
     * Writes a report, and a line feed behind it.
     *
     * @throws IOException if {@code out} does; it is left open
     */
    public static void write(Report report, Writer out) throws IOException {
        try (var json = generator(out)) {
            json.writeStartObject();
            json.writeStringField("spile", report.spile());
            json.writeStringField("house", report.house());
            writeStrings(json, "options", report.options());
            writeSummary(json, report.findings().summary());
            json.writeArrayFieldStart("findings");
            var findings = new FindingJson(json);
            for (var finding : report.findings().all()) {
                findings.write(finding);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        out.write('\n');
    }

    /** A generator that leaves its writer open. */
    static JsonGenerator generator(Writer out) throws IOException {
        var factory = JsonFactory.builder()
                .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                .build();
        return factory.createGenerator(out).setPrettyPrinter(linesOfTwoBlanks());
    }

    static void writeStrings(JsonGenerator json, String name, List<String> strings) throws IOException {
        json.writeArrayFieldStart(name);
        for (var string : strings) {
            json.writeString(string);
        }
        json.writeEndArray();
    }

    private static void writeSummary(JsonGenerator json, Summary summary) throws IOException {
        json.writeObjectFieldStart("summary");
        json.writeNumberField(Verdict.PASSES.word(), summary.passes());
        json.writeNumberField(Verdict.TIGHT.word(), summary.tight());
        json.writeNumberField(Verdict.FAILS.word(), summary.fails());
        json.writeNumberField(Verdict.NOT_KNOWN.word(), summary.notKnown());
        json.writeEndObject();
    }

    private static DefaultPrettyPrinter linesOfTwoBlanks() {
        var separators = Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER);
        var printer = new DefaultPrettyPrinter(separators);
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        return printer;
    }
}
