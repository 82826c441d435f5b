package org.spile.exporters.table;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Layer;
import org.spile.analysis.finding.Quantity;
import org.spile.analysis.finding.Remedy;
import org.spile.analysis.finding.Where;
import org.spile.geometry.kernel.measure.Written;

/** One finding as a JSON object; every member is written, in the order of the design. */
final class FindingJson {
    private static final int DECIMALS = 6;

    private final JsonGenerator json;

    FindingJson(JsonGenerator json) {
        this.json = json;
    }

    void write(Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", finding.id());
        json.writeStringField("check", finding.check());
        json.writeStringField("subject", finding.subject());
        json.writeStringField("against", finding.against().orElse(null));
        ReportJson.writeStrings(json, "stance", finding.stance());
        ReportJson.writeStrings(json, "situation", finding.situation());
        json.writeStringField("verdict", finding.verdict().word());
        quantity("value", finding.value());
        quantity("required", finding.required());
        quantity("margin", finding.margin());
        quantity("worst", finding.worst());
        quantity("likely", finding.likely());
        json.writeArrayFieldStart("stack");
        for (var layer : finding.stack()) {
            layer(layer);
        }
        json.writeEndArray();
        point("at", finding.at());
        point("to", finding.to());
        where(finding.where());
        json.writeStringField("because", finding.because());
        ReportJson.writeStrings(json, "rests on", finding.restsOn());
        json.writeArrayFieldStart("remedies");
        for (var remedy : finding.remedies()) {
            remedy(remedy);
        }
        json.writeEndArray();
        json.writeStringField("source", finding.source().isEmpty() ? null : finding.source());
        json.writeEndObject();
    }

    private void layer(Layer layer) throws IOException {
        json.writeStartObject();
        json.writeStringField("label", layer.label());
        number("factor", layer.factor());
        quantity("size", layer.size());
        json.writeObjectFieldStart("tolerance");
        number("plus", layer.plus());
        number("minus", layer.minus());
        json.writeEndObject();
        number("takes", layer.takes());
        json.writeStringField("origin", layer.origin().isEmpty() ? null : layer.origin());
        json.writeEndObject();
    }

    private void remedy(Remedy remedy) throws IOException {
        json.writeStartObject();
        json.writeStringField("says", remedy.says());
        ReportJson.writeStrings(json, "set", remedy.set());
        json.writeEndObject();
    }

    private void where(Optional<Where> where) throws IOException {
        if (where.isEmpty()) {
            json.writeNullField("where");
            return;
        }
        json.writeObjectFieldStart("where");
        json.writeStringField("thing", where.get().thing());
        json.writeStringField("piece", where.get().piece());
        quantity("position", where.get().position());
        json.writeEndObject();
    }

    private void quantity(String name, Optional<Quantity> quantity) throws IOException {
        if (quantity.isEmpty()) {
            json.writeNullField(name);
        } else {
            quantity(name, quantity.get());
        }
    }

    private void quantity(String name, Quantity quantity) throws IOException {
        json.writeObjectFieldStart(name);
        number("number", quantity.number());
        json.writeStringField("unit", quantity.unit());
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

    private void number(String name, double number) throws IOException {
        json.writeFieldName(name);
        json.writeNumber(Written.number(number, DECIMALS));
    }
}
