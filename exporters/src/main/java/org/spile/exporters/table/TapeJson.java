package org.spile.exporters.table;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.whole.TapeRow;
import org.spile.geometry.kernel.measure.Written;

/** A tape-measure sheet as one JSON object (RFC 8259); no member is ever left out. */
public final class TapeJson {
    private static final int DECIMALS = 6;

    private final TapeReport report;
    private final JsonGenerator json;

    private TapeJson(TapeReport report, JsonGenerator json) {
        this.report = report;
        this.json = json;
    }

    /**
     * Writes a sheet, and a line feed behind it.
     *
     * @throws IOException if {@code out} does; it is left open
     */
    public static void write(TapeReport report, Writer out) throws IOException {
        try (var json = ReportJson.generator(out)) {
            new TapeJson(report, json).write();
        }
        out.write('\n');
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeStringField("spile", report.spile());
        json.writeStringField("house", report.house());
        ReportJson.writeStrings(json, "options", report.options());
        json.writeArrayFieldStart("stops");
        for (var stop : report.sheet().stops()) {
            json.writeStartObject();
            json.writeStringField("title", stop.title());
            json.writeArrayFieldStart("rows");
            for (var row : stop.rows()) {
                row(row);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("decided");
        for (var finding : report.sheet().decided()) {
            decided(finding);
        }
        json.writeEndArray();
        json.writeNumberField("left", report.sheet().left());
        json.writeEndObject();
    }

    private void row(TapeRow row) throws IOException {
        var layer = row.layer();
        json.writeStartObject();
        json.writeNumberField("number", row.number());
        json.writeNumberField("rank", row.rank());
        json.writeStringField("path", row.path());
        json.writeStringField("says", row.says());
        quantity("value", Optional.of(layer.size()));
        json.writeObjectFieldStart("tolerance");
        number("plus", layer.plus());
        number("minus", layer.minus());
        json.writeEndObject();
        json.writeStringField("origin", layer.origin().isEmpty() ? null : layer.origin());
        json.writeStringField("trust", row.trust().words());
        number("presumed", row.presumed());
        optional("needed", row.needed());
        json.writeArrayFieldStart("decides");
        for (var each : row.decides()) {
            json.writeStartObject();
            json.writeStringField("finding", each.finding().id());
            json.writeStringField("letter", report.sheet().letter(each.finding()));
            number("takes", each.takesMm());
            optional("needed", each.needed());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("stance", row.tape().map(tape -> tape.stance()).orElse(null));
        point("from", row.tape().map(tape -> tape.from()));
        point("to", row.tape().map(tape -> tape.to()));
        json.writeEndObject();
    }

    private void decided(Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("letter", report.sheet().letter(finding));
        json.writeStringField("id", finding.id());
        json.writeStringField("verdict", finding.verdict().word());
        quantity("margin", finding.margin());
        quantity("worst", finding.worst());
        json.writeStringField("because", finding.because());
        json.writeEndObject();
    }

    private void quantity(String name, Optional<Quantity> quantity) throws IOException {
        if (quantity.isEmpty()) {
            json.writeNullField(name);
            return;
        }
        json.writeObjectFieldStart(name);
        number("number", quantity.get().number());
        json.writeStringField("unit", quantity.get().unit());
        json.writeEndObject();
    }

    private void point(String name, Optional<Vector3D> point) throws IOException {
        if (point.isEmpty()) {
            json.writeNullField(name);
            return;
        }
        json.writeArrayFieldStart(name);
        for (double coordinate : point.get().toArray()) {
            json.writeNumber(Written.number(coordinate, DECIMALS));
        }
        json.writeEndArray();
    }

    private void optional(String name, Optional<Double> number) throws IOException {
        if (number.isEmpty()) {
            json.writeNullField(name);
        } else {
            number(name, number.get());
        }
    }

    private void number(String name, double number) throws IOException {
        json.writeFieldName(name);
        json.writeNumber(Written.number(number, DECIMALS));
    }
}
