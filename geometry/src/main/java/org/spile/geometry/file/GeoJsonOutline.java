package org.spile.geometry.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.geojson.GeoJsonReader;
import org.spile.geometry.kernel.measure.NearestName;
import org.spile.geometry.kernel.measure.Unit;
import org.spile.geometry.kernel.measure.Written;

/**
 * Finds the one shape of a GeoJSON text (RFC 7946): its members are read here, its geometry by the JTS reader.
 *
 * <p>A feature is named by its {@code id}, or by {@code id} or {@code name} among its properties. The format means degrees of
 * longitude and latitude, but many draw plans with it: numbers that can only be degrees are questioned.
 */
final class GeoJsonOutline {
    private static final Set<String> TAKEN = Set.of("Polygon", "MultiPolygon", "LineString");
    private static final int MOST_NESTED = 64;
    private static final double DEGREES_OF_A_TOWN = 0.02;

    private GeoJsonOutline() {}

    static List<Vector2D> shape(String text, String id, Unit unit) throws DrawingFault {
        JsonNode root = tree(text);
        Geometry geometry = geometry(chosen(features(root), id));
        questionDegrees(geometry.getEnvelopeInternal());
        return GeometryRing.of(geometry, unit);
    }

    private static JsonNode tree(String text) throws DrawingFault {
        JsonFactory factory = JsonFactory.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(MOST_NESTED)
                        .build())
                .build();
        try {
            return new ObjectMapper(factory)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .readTree(text);
        } catch (JsonProcessingException fault) {
            String line = fault.getLocation() == null
                    ? ""
                    : "line " + fault.getLocation().getLineNr() + ", column "
                            + fault.getLocation().getColumnNr() + ": ";
            String why = Shown.sentence(String.valueOf(fault.getOriginalMessage()));
            throw DrawingFault.error(line + "this is no JSON: " + why, "Save the file anew.");
        }
    }

    private static List<JsonNode> features(JsonNode root) throws DrawingFault {
        String type = root.path("type").asText("");
        if (type.equals("FeatureCollection") && root.path("features").isArray()) {
            var features = new ArrayList<JsonNode>();
            root.path("features").forEach(features::add);
            return features;
        }
        if (type.equals("Feature") || TAKEN.contains(type)) {
            return List.of(root);
        }
        throw DrawingFault.error(
                type.isEmpty()
                        ? "this is no GeoJSON: it has no \"type\"."
                        : "a \"" + Shown.cut(type) + "\" is not read.",
                "A FeatureCollection, a Feature or a Polygon is.");
    }

    private static JsonNode chosen(List<JsonNode> features, String id) throws DrawingFault {
        List<String> ids = features.stream().map(GeoJsonOutline::id).toList();
        String known = ids.stream()
                .filter(name -> !name.isEmpty())
                .limit(8)
                .reduce((a, b) -> a + ", " + b)
                .orElse("none");
        if (id.isEmpty()) {
            if (features.size() == 1) {
                return features.get(0);
            }
            throw DrawingFault.error(
                    "it has " + features.size() + " features; ids: " + Shown.sentence(known), "Name one: id: its id.");
        }
        List<JsonNode> named =
                features.stream().filter(feature -> id(feature).equals(id)).toList();
        if (named.isEmpty()) {
            String nearest = NearestName.of(id, ids)
                    .map(name -> "Nearest: \"" + name + "\".")
                    .orElse("Its ids: " + Shown.sentence(known));
            throw DrawingFault.error("it has no feature \"" + id + "\".", nearest);
        }
        if (named.size() > 1) {
            throw DrawingFault.error("it has " + named.size() + " features \"" + id + "\".", "Keep one.");
        }
        return named.get(0);
    }

    private static String id(JsonNode feature) {
        for (JsonNode node : List.of(
                feature.path("id"),
                feature.path("properties").path("id"),
                feature.path("properties").path("name"))) {
            if (node.isValueNode() && !node.isNull()) {
                return node.asText();
            }
        }
        return "";
    }

    private static Geometry geometry(JsonNode feature) throws DrawingFault {
        JsonNode geometry = feature.has("geometry") ? feature.path("geometry") : feature;
        String type = geometry.path("type").asText("");
        if (!TAKEN.contains(type)) {
            throw DrawingFault.error(
                    type.isEmpty() ? "the feature has no geometry." : "a \"" + Shown.cut(type) + "\" bounds nothing.",
                    "Draw a Polygon.");
        }
        int depth = type.equals("LineString") ? 1 : type.equals("Polygon") ? 2 : 3;
        checkPositions(geometry.path("coordinates"), depth);
        checkRings(geometry.path("coordinates"), depth - 1);
        try {
            String bare = "{\"type\":\"" + type + "\",\"coordinates\":" + geometry.path("coordinates") + "}";
            return new GeoJsonReader().read(bare);
        } catch (ParseException | IllegalArgumentException fault) {
            String why = Shown.sentence(String.valueOf(fault.getMessage()));
            throw DrawingFault.error("its coordinates make no " + type + ": " + why, "Draw it anew.");
        }
    }

    /** The JTS reader trusts its input; this makes it trustworthy. */
    private static void checkPositions(JsonNode node, int depth) throws DrawingFault {
        if (!node.isArray() || node.isEmpty()) {
            throw DrawingFault.error("its coordinates are no list of positions.", "Draw it anew.");
        }
        if (depth > 0) {
            for (JsonNode below : node) {
                checkPositions(below, depth - 1);
            }
            return;
        }
        if (node.size() < 2 || !finite(node.get(0)) || !finite(node.get(1))) {
            throw DrawingFault.error(
                    "\"" + Shown.cut(node.toString()) + "\" is no position.", "A position is two numbers.");
        }
    }

    /** A ring ends where it begins (RFC 7946, 3.1.6). */
    private static void checkRings(JsonNode node, int depth) throws DrawingFault {
        for (JsonNode below : depth > 0 ? node : List.<JsonNode>of()) {
            checkRings(below, depth - 1);
            if (depth == 1 && (below.size() < 4 || !below.get(0).equals(below.get(below.size() - 1)))) {
                throw DrawingFault.error(
                        "the shape is open: it begins at "
                                + Shown.cut(below.get(0).toString()) + " and ends at "
                                + Shown.cut(below.get(below.size() - 1).toString()) + ".",
                        "End it where it begins, after three corners or more.");
            }
        }
    }

    private static boolean finite(JsonNode node) {
        return node.isNumber() && Double.isFinite(node.asDouble());
    }

    private static void questionDegrees(Envelope bounds) throws DrawingFault {
        boolean onEarth = Math.abs(bounds.getMinX()) <= 180
                && Math.abs(bounds.getMaxX()) <= 180
                && Math.abs(bounds.getMinY()) <= 90
                && Math.abs(bounds.getMaxY()) <= 90;
        if (onEarth && Math.max(bounds.getWidth(), bounds.getHeight()) < DEGREES_OF_A_TOWN) {
            throw DrawingFault.doubt(
                    "its numbers look like degrees of longitude and latitude (" + Written.number(bounds.getMinX(), 5)
                            + ", " + Written.number(bounds.getMinY(), 5) + ").",
                    "Project it to lengths; a plan in metres spans more than 0.02.");
        }
    }
}
