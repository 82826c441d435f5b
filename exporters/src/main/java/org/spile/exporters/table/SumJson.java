package org.spile.exporters.table;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import org.spile.analysis.finding.Quantity;
import org.spile.geometry.kernel.measure.Written;

/**
 * A sum as one JSON object (RFC 8259): {@code spile}, {@code topic}, {@code asked}, then a member for each group with one for
 * each answer, and {@code cautions}.
 *
 * <p>A quantity is {@code {"number", "unit"}}; one between bounds is {@code {"low", "value", "high"}} of such; what isn't known
 * is {@code {"not known": "because ..."}}. Numbers are rounded to a millionth of their unit.
 */
public final class SumJson {
    private static final int DECIMALS = 6;

    private SumJson() {}

    /**
     * Writes a sum, and a line feed behind it.
     *
     * @throws IOException if {@code out} does; it is left open
     */
    public static void write(Sum sum, Writer out) throws IOException {
        try (var json = ReportJson.generator(out)) {
            json.writeStartObject();
            json.writeStringField("spile", sum.spile());
            json.writeStringField("topic", sum.topic());
            json.writeStringField("asked", sum.title());
            for (var group : sum.groups()) {
                json.writeObjectFieldStart(group.key());
                for (var line : group.lines()) {
                    json.writeFieldName(line.key());
                    found(json, line.found());
                }
                json.writeEndObject();
            }
            ReportJson.writeStrings(json, "cautions", sum.cautions());
            json.writeEndObject();
        }
        out.write('\n');
    }

    private static void found(JsonGenerator json, Sum.Found found) throws IOException {
        if (found instanceof Sum.Found.Said said) {
            json.writeString(said.words());
            return;
        }
        if (found instanceof Sum.Found.One one) {
            quantity(json, one.quantity());
            return;
        }
        json.writeStartObject();
        if (found instanceof Sum.Found.Between between) {
            json.writeFieldName("low");
            quantity(json, between.low());
            json.writeFieldName("value");
            quantity(json, between.value());
            json.writeFieldName("high");
            quantity(json, between.high());
        } else if (found instanceof Sum.Found.Open open) {
            json.writeStringField("not known", open.because());
        }
        json.writeEndObject();
    }

    private static void quantity(JsonGenerator json, Quantity quantity) throws IOException {
        json.writeStartObject();
        json.writeFieldName("number");
        json.writeNumber(Written.number(quantity.number(), DECIMALS));
        json.writeStringField("unit", quantity.unit());
        json.writeEndObject();
    }
}
