package org.spile.geometry.file;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.spile.geometry.house.material.Material;
import org.spile.geometry.house.material.Materials;
import org.spile.geometry.kernel.measure.Reading;
import org.spile.geometry.kernel.measure.Written;

/** Writes the tables of the reference page from the definitions that read the file. */
final class KeyTables {
    private KeyTables() {}

    /** Every thing, the file first, each before what only it uses. */
    static List<Shape<?>> shapes() {
        Map<String, Shape<?>> found = new LinkedHashMap<>();
        var waiting = new ArrayDeque<Shape<?>>(List.of(HouseShape.SHAPE));
        while (!waiting.isEmpty()) {
            Shape<?> next = waiting.removeFirst();
            if (found.putIfAbsent(next.name(), next) == null) {
                waiting.addAll(next.below());
            }
        }
        return new ArrayList<>(found.values());
    }

    /** A heading, a sentence and a table for each thing. */
    static String keys() {
        var page = new StringBuilder();
        for (Shape<?> shape : shapes()) {
            page.append("\n#### ")
                    .append(shape.name())
                    .append("\n\n")
                    .append(shape.says())
                    .append("\n\n");
            if (!shape.allKeys().isEmpty()) {
                page.append("| key | means | as | asked by |\n|---|---|---|---|\n");
                shape.allKeys().forEach(key -> page.append(row(key)));
            }
        }
        return page.append('\n').toString();
    }

    private static String row(Key<?> key) {
        String unsaid = key.required() ? " *Required.*" : key.unsaid().isEmpty() ? "" : " [" + key.unsaid() + "]";
        return "| `" + key.name() + "` | " + key.says() + unsaid + " | "
                + key.form().linked() + " | " + key.asked() + " |\n";
    }

    /** A row for each shipped material. */
    static String materials() {
        var page = new StringBuilder("\n| id | material | W/mK | vapour | kg/m3 | rough, mm | thickness | source |\n");
        page.append("|---|---|---|---|---|---|---|---|\n");
        for (Material material : Materials.shipped().all()) {
            page.append("| `").append(material.id()).append("` | ").append(material.title());
            page.append(" | ").append(material.conducts().map(KeyTables::number).orElse("not known"));
            page.append(" | ")
                    .append(
                            material.tight()
                                    ? "tight"
                                    : material.vapour().map(KeyTables::number).orElse("not known"));
            page.append(" | ").append(material.density().map(KeyTables::number).orElse("not known"));
            page.append(" | ").append(material.rough().map(KeyTables::number).orElse("not known"));
            String rule = material.thickness().source();
            page.append(" | ").append(rule.isEmpty() ? "exact unless said" : rule);
            page.append(" | ").append(material.source()).append(" |\n");
        }
        return page.append('\n').toString();
    }

    private static String number(Reading reading) {
        return Written.number(reading.value(), 6);
    }
}
