package org.spile.geometry.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.kernel.measure.QuantityText;

/** Goes with one reading of a file: knows its words, names and materials, and writes down all that is wrong. */
final class Scribe {
    private final List<Written> written = new ArrayList<>();
    private final Spot root;
    private final QuantityText quantities;
    private final Names names;
    private final Drawings drawings;
    private Materials materials = Materials.shipped();

    /** Something wrong, and whether it stands there by a {@code like}. */
    private record Written(Problem problem, String bare, boolean copied) {}

    Scribe(Spot root, QuantityText quantities, Names names, Drawings drawings) {
        this.root = root;
        this.quantities = quantities;
        this.names = names;
        this.drawings = drawings;
    }

    Spot root() {
        return root;
    }

    QuantityText quantities() {
        return quantities;
    }

    Names names() {
        return names;
    }

    Drawings drawings() {
        return drawings;
    }

    Materials materials() {
        return materials;
    }

    /** From here on layers know these. */
    void materials(Materials known) {
        materials = known;
    }

    /** Writes down what is wrong with a value: its path, a colon, the words. */
    void wrong(Spot at, String says, String advice) {
        write(at, at.place(), says, advice, false);
    }

    /** Writes down what is wrong with a thing as a whole: its path, then the words as a sentence of it. */
    void wrongThing(Spot at, String says, String advice) {
        write(at, at.place(), title(at) + says, advice, false);
    }

    /** As {@link #wrongThing}, placed at one of its keys. */
    void wrongKey(Spot at, Spot.Entry entry, String says, String advice) {
        write(at, entry.keyPlace(), title(at) + says, advice, false);
    }

    /** Asks about a value. */
    void doubt(Spot at, String says, String advice) {
        write(at, at.place(), says, advice, true);
    }

    /** As {@link #doubt}, at a place within the value. */
    void doubt(Spot at, Place place, String says, String advice) {
        write(at, place, says, advice, true);
    }

    /** How much has been written down so far. */
    int count() {
        return written.size();
    }

    /** All of it, in the order of the file; what a copy repeats of its original only once. */
    List<Problem> problems() {
        var own = new HashSet<String>();
        for (Written each : written) {
            if (!each.copied()) {
                own.add(each.problem().place() + each.bare());
            }
        }
        return written.stream()
                .filter(each -> !each.copied() || own.add(each.problem().place() + each.bare()))
                .map(Written::problem)
                .toList();
    }

    private void write(Spot at, Place place, String says, String advice, boolean doubt) {
        String bare = says.startsWith(at.path()) ? says.substring(at.path().length()) : says;
        written.add(new Written(new Problem(place, at.path(), says, advice, doubt), bare, at.copied()));
    }

    private static String title(Spot at) {
        return at.path().isEmpty() ? "the file" : at.path();
    }
}
