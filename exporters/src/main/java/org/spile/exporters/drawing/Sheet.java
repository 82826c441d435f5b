package org.spile.exporters.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * One sheet of paper with all that is drawn on it.
 *
 * @param name its own name within a set, lower case and hyphens: files are named after it
 * @param paper size
 * @param block what the title block says
 * @param projection which symbol it carries
 * @param number which sheet of the set
 * @param of how many the set has
 * @param views pictures, each in its place
 * @param marks notes, tables and legends (paper mm); frame and title block are not among them
 */
public record Sheet(
        String name,
        PaperSize paper,
        TitleBlock block,
        Projection projection,
        int number,
        int of,
        List<View> views,
        List<Mark> marks) {
    /** Copies the lists and refuses names that some format could not carry. */
    public Sheet {
        views = List.copyOf(views);
        marks = List.copyOf(marks);
        if (!name.matches("[a-z][a-z0-9-]*")) {
            throw new IllegalArgumentException("sheet name '" + name + "' is not lower case letters, digits, hyphens");
        }
        if (number < 1 || of < number) {
            throw new IllegalArgumentException("sheet " + number + " of " + of);
        }
        if (views.stream().map(View::name).distinct().count() < views.size()) {
            throw new IllegalArgumentException("two views of sheet " + name + " have the same name");
        }
    }

    /** The same sheet with its number in a set. */
    public Sheet numbered(int which, int all) {
        return new Sheet(name, paper, block, projection, which, all, views, marks);
    }

    /** Frame, grid and title block, drawn from the fields (paper mm). */
    public List<Mark> furniture() {
        var furniture = new ArrayList<Mark>(Frame.of(paper));
        furniture.addAll(TitleBlockTable.of(this));
        return furniture;
    }

    /** The scales of its views, the first view's first, each once: {@code 1:20, 1:5}; tables and plots have none. */
    public String scales() {
        return String.join(
                ", ",
                views.stream()
                        .filter(view -> !view.title().isEmpty())
                        .map(view -> view.scale().says())
                        .distinct()
                        .toList());
    }
}
