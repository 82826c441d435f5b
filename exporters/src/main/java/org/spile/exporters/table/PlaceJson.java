package org.spile.exporters.table;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.analysis.fit.Limit;
import org.spile.analysis.place.Growth;
import org.spile.analysis.place.NoPlace;
import org.spile.analysis.place.PlaceAnswer;
import org.spile.analysis.place.PlaceMap;
import org.spile.geometry.kernel.measure.Written;
import org.spile.geometry.kernel.planar.Outline;

/**
 * The places of a unit as one JSON object (RFC 8259). No member is ever left out: what isn't there is {@code null} or an empty
 * list.
 *
 * <p>Lengths are mm in the frame of the unit's trailer, areas mm2, angles degrees; points are {@code [x, y]} or {@code [x, y,
 * z]}. Numbers are rounded to a millionth.
 */
public final class PlaceJson {
    private static final int DECIMALS = 6;

    private PlaceJson() {}

    /**
     * Writes an answer, and a line feed behind it.
     *
     * @param spile the version
     * @param house the file as it was named
     * @throws IOException if {@code out} does; it is left open
     */
    public static void write(String spile, String house, PlaceAnswer answer, Writer out) throws IOException {
        try (var json = ReportJson.generator(out)) {
            json.writeStartObject();
            json.writeStringField("spile", spile);
            json.writeStringField("house", house);
            json.writeStringField("unit", answer.unit());
            json.writeStringField("in", answer.in());
            json.writeStringField("frame", answer.trailer());
            ReportJson.writeStrings(json, "stances", answer.stances());
            ReportJson.writeStrings(json, "left-out", answer.leftOut());
            json.writeObjectFieldStart("now");
            point(json, "at", answer.now());
            number(json, "yaw", answer.nowYawDeg());
            json.writeBooleanField("fits", answer.fitsNow());
            json.writeEndObject();
            json.writeBooleanField("fits", answer.fits());
            json.writeStringField("not-known", answer.notKnown().orElse(null));
            json.writeArrayFieldStart("maps");
            for (var map : answer.maps()) {
                map(json, map);
            }
            json.writeEndArray();
            none(json, answer);
            growth(json, answer);
            json.writeEndObject();
        }
        out.write('\n');
    }

    private static void map(JsonGenerator json, PlaceMap map) throws IOException {
        json.writeStartObject();
        number(json, "yaw", map.yawDeg());
        number(json, "area", map.free().areaMm2());
        json.writeArrayFieldStart("areas");
        for (var area : map.free().areas()) {
            area(json, area);
        }
        json.writeEndArray();
        json.writeFieldName("lines");
        rings(json, map.free().lines());
        json.writeFieldName("points");
        ring(json, map.free().points());
        if (map.best().isPresent()) {
            point(json, "roomiest", map.best().get());
        } else {
            json.writeNullField("roomiest");
        }
        number(json, "room", map.roomMm());
        json.writeEndObject();
    }

    private static void area(JsonGenerator json, Outline area) throws IOException {
        json.writeStartObject();
        json.writeFieldName("outline");
        ring(json, area.shell());
        json.writeFieldName("holes");
        rings(json, area.holes());
        json.writeEndObject();
    }

    private static void none(JsonGenerator json, PlaceAnswer answer) throws IOException {
        if (answer.empty().isEmpty()) {
            json.writeNullField("no-place");
            return;
        }
        NoPlace none = answer.empty().get();
        json.writeObjectFieldStart("no-place");
        number(json, "too-large", none.tooLargeMm());
        json.writeBooleanField("only-together", none.onlyTogether());
        json.writeStringField(
                "governing", none.governing().map(asked -> asked.limit().id()).orElse(null));
        json.writeArrayFieldStart("limits");
        for (var asked : none.limits()) {
            json.writeStartObject();
            json.writeStringField("id", asked.limit().id());
            json.writeStringField("says", asked.limit().says());
            number(json, "asked", asked.limit().askedMm());
            number(json, "alone-leaves", asked.aloneMm2());
            perhaps(json, "yields", asked.yieldMm());
            json.writeStringField("source", asked.limit().source());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("things");
        for (var thing : none.things()) {
            json.writeStartObject();
            json.writeStringField("id", thing.id());
            json.writeStringField("title", thing.title());
            perhaps(json, "yields", thing.yieldMm());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("pairs");
        for (var pair : none.pairs()) {
            json.writeStartArray();
            for (Limit limit : pair) {
                json.writeString(limit.id());
            }
            json.writeEndArray();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("changes");
        for (var lever : none.levers()) {
            change(json, lever);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void change(JsonGenerator json, NoPlace.Lever lever) throws IOException {
        json.writeStartObject();
        json.writeStringField("path", lever.path());
        number(json, "now", lever.nowMm());
        number(json, "none-to", lever.emptyToMm());
        perhaps(json, "opens-at", lever.toMm());
        number(json, "area", lever.areaMm2());
        json.writeStringField("set", lever.set().orElse(null));
        ReportJson.writeStrings(json, "but", lever.but());
        json.writeEndObject();
    }

    private static void growth(JsonGenerator json, PlaceAnswer answer) throws IOException {
        if (answer.growth().isEmpty()) {
            json.writeNullField("growth");
            return;
        }
        Growth growth = answer.growth().get();
        json.writeObjectFieldStart("growth");
        json.writeStringField("path", growth.path());
        json.writeArrayFieldStart("rows");
        for (var row : growth.rows()) {
            json.writeStartObject();
            number(json, "drop", row.dropMm());
            json.writeArrayFieldStart("areas");
            for (double area : row.areasMm2()) {
                json.writeNumber(Written.number(area, DECIMALS));
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void rings(JsonGenerator json, List<List<Vector2D>> rings) throws IOException {
        json.writeStartArray();
        for (var ring : rings) {
            ring(json, ring);
        }
        json.writeEndArray();
    }

    private static void ring(JsonGenerator json, List<Vector2D> ring) throws IOException {
        json.writeStartArray();
        for (var corner : ring) {
            json.writeStartArray();
            json.writeNumber(Written.number(corner.getX(), DECIMALS));
            json.writeNumber(Written.number(corner.getY(), DECIMALS));
            json.writeEndArray();
        }
        json.writeEndArray();
    }

    private static void point(JsonGenerator json, String name, Vector3D at) throws IOException {
        json.writeArrayFieldStart(name);
        for (double coordinate : new double[] {at.getX(), at.getY(), at.getZ()}) {
            json.writeNumber(Written.number(coordinate, DECIMALS));
        }
        json.writeEndArray();
    }

    private static void number(JsonGenerator json, String name, double value) throws IOException {
        json.writeFieldName(name);
        json.writeNumber(Written.number(value, DECIMALS));
    }

    private static void perhaps(JsonGenerator json, String name, OptionalDouble value) throws IOException {
        if (value.isPresent()) {
            number(json, name, value.getAsDouble());
        } else {
            json.writeNullField(name);
        }
    }
}
