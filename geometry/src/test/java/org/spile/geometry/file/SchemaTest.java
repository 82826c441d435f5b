package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/**
 * Holds the published schema to the definitions, and to house files as a general YAML reader and a general validator see
 * them; {@code -Dspile.rewrite=true} writes it anew.
 */
class SchemaTest {
    private static final Path PUBLISHED = Houses.inProject("docs/reference/house-file.schema.json");
    private static final ObjectMapper JSON = new ObjectMapper();

    private static String fresh() throws JsonProcessingException {
        return JSON.writerWithDefaultPrettyPrinter()
                        .writeValueAsString(new SchemaBook().whole(HouseShape.SHAPE))
                        .replace("\r\n", "\n")
                + "\n";
    }

    private static Set<ValidationMessage> faults(String yaml) throws JsonProcessingException {
        JsonSchema schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(fresh());
        Object tree =
                new Load(LoadSettings.builder().setSchema(new CoreSchema()).build()).loadFromString(yaml);
        JsonNode node = JSON.valueToTree(tree);
        return schema.validate(node);
    }

    @Test
    void published_asDefined() throws IOException {
        if (Houses.rewrites()) {
            Files.writeString(PUBLISHED, fresh());
        }
        assertEquals(fresh(), Houses.read(PUBLISHED), "run this test with -Dspile.rewrite=true");
    }

    @Test
    void itself_isASchema() throws IOException {
        JsonSchema draft = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(Set.of(), draft.validate(JSON.readTree(fresh())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"loft", "site-cabin", "boat-locker", "saltmarsh"})
    void soundHouses_validate(String name) throws IOException {
        assertEquals(Set.of(), faults(Houses.text(name)));
    }

    @Test
    void samples_validate() throws IOException {
        try (var files = Files.walk(Houses.inProject("samples"))) {
            for (Path file : files.filter(path ->
                            path.endsWith("house.yaml") && !path.toString().contains("target"))
                    .toList()) {
                assertEquals(Set.of(), faults(Files.readString(file)), file.toString());
            }
        }
    }

    /** What an editor can mark while typing. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "cavities: {loft: {depth: 262}}",
                "cavities: {Loft: {high: 262}}",
                "units: {cooler: {mass: 19}}",
                "units: {cooler: {high: [200]}}",
                "limits: {flow: {bench: 40}}",
                "units: {cooler: {at: {back: 20}}}",
                "units: {cooler: {blows: north}}",
                "terminals: {grille: {free: 70 %}}",
                "cavities: {loft: {top: {linings: [{ply: 6, pir: 20}]}}}",
                "options: {a: [no edit]}"
            })
    void mistakes_failValidation(String yaml) throws IOException {
        assertFalse(faults(yaml).isEmpty());
    }
}
