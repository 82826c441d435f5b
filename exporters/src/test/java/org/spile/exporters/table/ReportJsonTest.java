package org.spile.exporters.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.spile.analysis.finding.Finding;
import org.spile.analysis.finding.Findings;
import org.spile.analysis.finding.Remedy;

/** Holds the JSON to the published schema, by a general validator of JSON Schema and a general reader of JSON. */
class ReportJsonTest {
    private static final ObjectMapper READER = new ObjectMapper();
    private static final JsonSchema SCHEMA = schema();

    @Test
    void everyVerdict_isValid() throws IOException {
        assertEquals(Set.of(), SCHEMA.validate(READER.readTree(json(Examples.report()))));
    }

    @Test
    void members_standInTheOrderOfTheDesign() throws IOException {
        var root = READER.readTree(json(Examples.report()));
        assertEquals(List.of("spile", "house", "options", "summary", "findings"), names(root));
        assertEquals(
                List.of(
                        "id",
                        "check",
                        "subject",
                        "against",
                        "stance",
                        "situation",
                        "verdict",
                        "value",
                        "required",
                        "margin",
                        "worst",
                        "likely",
                        "stack",
                        "at",
                        "to",
                        "where",
                        "because",
                        "rests on",
                        "remedies",
                        "source"),
                names(root.path("findings").path(0)));
    }

    @Test
    void everySummaryMember_countsItsVerdict() throws IOException {
        var summary = READER.readTree(json(Examples.report())).path("summary");
        assertEquals("{\"passes\":1,\"tight\":1,\"fails\":1,\"not known\":1}", summary.toString());
    }

    @Test
    void numbers_areRoundedToAMillionthAndPlain() throws IOException {
        var finding = READER.readTree(json(Examples.report())).path("findings").path(0);
        assertEquals("[610,-460.25,1996]", finding.path("at").toString());
        assertEquals("{\"number\":-16.5,\"unit\":\"mm\"}", finding.path("worst").toString());
    }

    @Test
    void absent_isNullOrEmpty() throws IOException {
        var report = new Report("1.2.3", "h", "", List.of(), List.of(), Findings.of(List.of(Examples.open())));
        var finding = READER.readTree(json(report)).path("findings").path(0);
        for (var name : List.of("value", "required", "margin", "worst", "likely", "at", "to", "where", "source")) {
            assertTrue(finding.path(name).isNull(), name);
        }
        for (var name : List.of("stance", "situation", "stack", "rests on", "remedies")) {
            assertEquals("[]", finding.path(name).toString(), name);
        }
    }

    @Test
    void schema_refusesWhatIsNotSaid() throws IOException {
        var finding = (ObjectNode)
                READER.readTree(json(Examples.report())).path("findings").path(0);
        for (var name : names(finding)) {
            var root = READER.readTree(json(Examples.report()));
            ((ObjectNode) root.path("findings").path(0)).remove(name);
            assertFalse(SCHEMA.validate(root).isEmpty(), "left out: " + name);
        }
        var more = READER.readTree(json(Examples.report()));
        ((ObjectNode) more.path("findings").path(0)).put("colour", "red");
        assertFalse(SCHEMA.validate(more).isEmpty());
        var other = READER.readTree(json(Examples.report()));
        ((ObjectNode) other.path("findings").path(0)).put("verdict", "maybe");
        assertFalse(SCHEMA.validate(other).isEmpty());
    }

    @Property(tries = 200)
    void anyWords_comeBackAsTheyWere(@ForAll String words) throws IOException {
        law(words);
    }

    private static void law(String words) throws IOException {
        // Half a surrogate pair isn't a character, and no encoding can carry it.
        var whole = words.codePoints()
                .filter(c -> c < Character.MIN_SURROGATE || c > Character.MAX_SURROGATE)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        var finding = Finding.open("tow", "trailers", Optional.of(whole), "Because: " + whole)
                .with(List.of(new Remedy("Do: " + whole, List.of("a=" + whole))));
        var report = new Report("1.2.3", "h", whole, List.of(), List.of(), Findings.of(List.of(finding)));
        var root = READER.readTree(json(report));
        assertEquals(Set.of(), SCHEMA.validate(root));
        assertEquals("Because: " + whole, root.at("/findings/0/because").textValue());
        assertEquals("a=" + whole, root.at("/findings/0/remedies/0/set/0").textValue());
    }

    private static String json(Report report) throws IOException {
        var out = new StringWriter();
        ReportJson.write(report, out);
        return out.toString();
    }

    private static List<String> names(JsonNode object) {
        var names = new ArrayList<String>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static JsonSchema schema() {
        var file = Path.of(System.getProperty("spile.root"), "docs/reference/findings.schema.json");
        try {
            return JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
