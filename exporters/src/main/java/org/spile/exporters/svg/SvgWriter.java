package org.spile.exporters.svg;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Sheet;
import org.spile.exporters.drawing.SheetSet;
import org.spile.exporters.drawing.SheetWriter;
import org.spile.exporters.drawing.View;
import org.spile.geometry.kernel.measure.Written;

/** Writes one sheet as SVG 1.1: {@code width} and {@code height} in millimetres, one user unit a millimetre. */
public final class SvgWriter implements SheetWriter {
    /** A writer. */
    public SvgWriter() {}

    @Override
    public String ending() {
        return "svg";
    }

    @Override
    public boolean oneSheetAFile() {
        return true;
    }

    @Override
    public void write(SheetSet sheets, OutputStream out) throws IOException {
        if (sheets.sheets().size() != 1) {
            throw new IllegalArgumentException(
                    "an SVG file holds one sheet, not " + sheets.sheets().size());
        }
        try {
            // The JDK's own writer, whatever else is on the class path: the same bytes everywhere.
            var xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
            var tags = new SvgTags(xml);
            write(sheets.sheets().get(0), tags);
            tags.end();
        } catch (XMLStreamException e) {
            throw new IOException("the SVG could not be written", e);
        }
    }

    private static void write(Sheet sheet, SvgTags tags) throws XMLStreamException {
        var paper = sheet.paper();
        tags.start();
        tags.open("svg");
        tags.attribute("xmlns", "http://www.w3.org/2000/svg");
        tags.attribute("width", paper.wideMm() + "mm");
        tags.attribute("height", paper.highMm() + "mm");
        tags.attribute("viewBox", "0 0 " + paper.wideMm() + " " + paper.highMm());
        tags.attribute("role", "img");
        tags.attribute("aria-labelledby", tags.id("title") + " " + tags.id("desc"));
        tags.attribute("lang", "en");
        tags.attribute("xml:space", "preserve");
        tags.element("title", "title", sheet.block().title());
        tags.element("desc", "desc", describe(sheet));
        tags.empty("rect");
        tags.attribute("width", Integer.toString(paper.wideMm()));
        tags.attribute("height", Integer.toString(paper.highMm()));
        tags.attribute("fill", "#ffffff");
        marks("frame", sheet.furniture(), sheet, tags);
        marks("words", sheet.marks(), sheet, tags);
        for (var view : sheet.views()) {
            view(view, sheet, tags);
        }
        tags.close();
    }

    /** What is drawn, how large: for readers who can't see it. */
    private static String describe(Sheet sheet) {
        var views = sheet.views().stream()
                .filter(view -> !view.title().isEmpty())
                .map(view -> view.title() + " at " + view.scale().says())
                .collect(Collectors.joining("; "));
        return "Sheet " + sheet.number() + " of " + sheet.of() + ", "
                + sheet.paper().name() + ", "
                + sheet.paper().wideMm() + " × " + sheet.paper().highMm() + " mm, "
                + sheet.block().documentType()
                + (views.isEmpty() ? "" : ": " + views) + ". Print at 100 %, without fitting to the page.";
    }

    private static void marks(String name, List<Mark> marks, Sheet sheet, SvgTags tags) throws XMLStreamException {
        if (marks.isEmpty()) {
            return;
        }
        tags.open("g");
        tags.attribute("id", tags.id(name));
        new SvgLayers(tags, name, new SvgPlace(1, Vector2D.ZERO, sheet.paper().highMm()), marks).write();
        tags.close();
    }

    private static void view(View view, Sheet sheet, SvgTags tags) throws XMLStreamException {
        var name = "view-" + view.name();
        tags.open("g");
        tags.attribute("id", tags.id(name));
        tags.attribute("data-scale", Written.number(view.unitsPerMm(), 6));
        tags.attribute("data-origin", origin(view, sheet));
        tags.element(
                "title",
                "",
                view.title().isEmpty()
                        ? view.name()
                        : view.title() + ", " + view.scale().says());
        var place = new SvgPlace(
                view.unitsPerMm(), view.paper(Vector2D.ZERO), sheet.paper().highMm());
        new SvgLayers(tags, name, place, view.marks()).write();
        tags.close();
    }

    /** Where the view's model origin lies, in user units. */
    private static String origin(View view, Sheet sheet) {
        var origin = view.paper(Vector2D.ZERO);
        return Written.number(origin.getX(), 4) + " "
                + Written.number(sheet.paper().highMm() - origin.getY(), 4);
    }
}
