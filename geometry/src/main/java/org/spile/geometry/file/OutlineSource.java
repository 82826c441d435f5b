package org.spile.geometry.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.geometry.kernel.measure.Unit;

/**
 * Takes one closed shape from a drawing beside the house file.
 *
 * <p>DXF text: LINE, LWPOLYLINE, POLYLINE, ARC and CIRCLE; its {@code $INSUNITS} gives the unit unless one is stated in the
 * house file, which goes before. GeoJSON (RFC 7946) and well-known text (OGC 06-103r4) give no unit of length, so it must be
 * stated. Curves become corners that lie on them and leave them by at most 0.05 mm; ends within 0.01 mm are one. Drawings
 * are read from the house file's folder and those below it only, wherever links lead.
 */
final class OutlineSource {
    private static final double LARGEST_MM = 100_000;
    private static final double SMALLEST_MM = 1;

    /** What came of it. */
    sealed interface Result permits Taken, Refused {}

    /**
     * The shape.
     *
     * @param cornersMm its corners in mm, counter-clockwise, from the rearmost (then rightmost) one
     */
    record Taken(List<Vector2D> cornersMm) implements Result {
        Taken {
            cornersMm = List.copyOf(cornersMm);
        }
    }

    /**
     * No shape.
     *
     * @param says what is wrong, with the drawing's name
     * @param advice what to do
     * @param doubt whether it is a question rather than an error
     */
    record Refused(String says, String advice, boolean doubt) implements Result {}

    private final Path folder;

    /**
     * Makes a source of outlines.
     *
     * @param folder the folder that the house file stands in
     */
    OutlineSource(Path folder) {
        this.folder = folder;
    }

    Result read(DrawnShape.Drawn drawn) {
        try {
            Path file = inside(drawn.from());
            List<Vector2D> ring = shape(file, drawn);
            checkSize(ring);
            return new Taken(RingStart.settled(ring));
        } catch (DrawingFault fault) {
            return fault.refused(drawn.from());
        }
    }

    private Path inside(String name) throws DrawingFault {
        var outside = DrawingFault.error(
                "it is not in the house file's folder or one below it.", "Put the drawing beside the house file.");
        try {
            Path path = Path.of(name);
            if (path.isAbsolute() || name.isBlank()) {
                throw outside;
            }
            Path home = folder.toRealPath();
            if (!home.resolve(path).normalize().startsWith(home)) {
                throw outside;
            }
            Path file = home.resolve(path);
            if (Files.notExists(file)) {
                return file;
            }
            Path real = file.toRealPath();
            if (!real.startsWith(home)) {
                throw outside;
            }
            return real;
        } catch (InvalidPathException fault) {
            throw DrawingFault.error("this is no file's name.", "Write a name such as plan.dxf.");
        } catch (IOException fault) {
            throw DrawingFault.error("it can't be reached.", "Check the folder's permissions.");
        }
    }

    private static List<Vector2D> shape(Path file, DrawnShape.Drawn drawn) throws DrawingFault {
        String name = drawn.from().toLowerCase(Locale.ROOT);
        Optional<Unit> stated = DrawingUnit.stated(drawn.unit());
        if (name.endsWith(".dxf")) {
            return DxfOutline.shape(text(SourceText.readAnyCoding(file, drawn.from())), drawn.layer(), stated);
        }
        boolean json = name.endsWith(".geojson") || name.endsWith(".json");
        if (!json && !name.endsWith(".wkt")) {
            throw DrawingFault.error("this kind of drawing is not read.", "Save it as .dxf, .geojson or .wkt.");
        }
        Unit unit = stated.orElseThrow(() -> DrawingFault.error(
                "this kind of drawing says no unit of length.", "State it beside the file's name: unit: mm."));
        String text = text(SourceText.read(file, drawn.from()));
        return json ? GeoJsonOutline.shape(text, drawn.id(), unit) : GeometryRing.of(GeometryRing.fromText(text), unit);
    }

    private static String text(SourceText source) throws DrawingFault {
        if (source instanceof SourceText.Legible legible) {
            return legible.text();
        }
        Problem problem = ((SourceText.Unusable) source).problem();
        String line =
                problem.place().line() == 0 ? "" : "line " + problem.place().line() + ": ";
        throw DrawingFault.error(line + problem.says(), problem.advice());
    }

    private static void checkSize(List<Vector2D> ring) throws DrawingFault {
        double most = 0;
        for (Vector2D corner : ring) {
            most = Math.max(most, Math.max(Math.abs(corner.getX()), Math.abs(corner.getY())));
        }
        if (most > LARGEST_MM) {
            throw DrawingFault.error("the shape reaches beyond 100 m.", "Is the unit right? State it: unit: mm.");
        }
        if (Math.min(extent(ring, true), extent(ring, false)) < SMALLEST_MM) {
            throw DrawingFault.error("the shape is less than 1 mm across.", "Is the unit right? State it: unit: m.");
        }
    }

    private static double extent(List<Vector2D> ring, boolean along) {
        var range = ring.stream()
                .mapToDouble(along ? Vector2D::getX : Vector2D::getY)
                .summaryStatistics();
        return range.getMax() - range.getMin();
    }
}
