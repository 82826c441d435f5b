package org.spile.exporters.drawing;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * One picture on a sheet: part of the model, at a scale, in a place.
 *
 * @param name its own name among the drawing's views, lower case and hyphens
 * @param title what it shows, in words; empty for a table or a plot, which has no scale
 * @param scale how large
 * @param window all that is drawn, dimensions and title included (model mm)
 * @param at where the window's lower left corner stands on paper (mm)
 * @param marks in model millimetres
 * @param inPlace whether its coordinates are the site's own, as a plan's are; other views may be moved aside where
 *     several share one space
 */
public record View(
        String name, String title, Scale scale, Extent window, Vector2D at, List<Mark> marks, boolean inPlace) {
    /** Copies the marks and refuses names that some format could not carry. */
    public View {
        Places.check(at);
        title = Lettering.printable(title);
        marks = List.copyOf(marks);
        if (!name.matches("[a-z][a-z0-9-]*")) {
            throw new IllegalArgumentException("view name '" + name + "' is not lower case letters, digits, hyphens");
        }
    }

    /** Model millimetres for one millimetre on paper: N of 1:N. */
    public double unitsPerMm() {
        return scale.modelPerPaper();
    }

    /**
     * Where a point of the model comes to stand on paper.
     *
     * @param model in the view's coordinates (mm)
     * @return on the sheet, from its lower left corner (mm)
     */
    public Vector2D paper(Vector2D model) {
        return at.add(model.subtract(window.corner()).multiply(1 / unitsPerMm()));
    }

    /** The part of the sheet it takes (mm). */
    public Extent onPaper() {
        return Extent.ofSize(at.getX(), at.getY(), window.wide() / unitsPerMm(), window.high() / unitsPerMm());
    }

    /** The same view elsewhere on the sheet. */
    public View placed(Vector2D corner) {
        return new View(name, title, scale, window, corner, marks, inPlace);
    }
}
