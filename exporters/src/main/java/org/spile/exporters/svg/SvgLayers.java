package org.spile.exporters.svg;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import org.spile.exporters.drawing.HatchLines;
import org.spile.exporters.drawing.Layer;
import org.spile.exporters.drawing.LineType;
import org.spile.exporters.drawing.Mark;
import org.spile.exporters.drawing.Patch;

/** Marks in one group a layer, and within it one group a part of the house. */
final class SvgLayers {
    private final SvgTags tags;
    private final String name;
    private final SvgPlace place;
    private final List<Patch> texts;
    private final Map<Layer, Map<String, List<Mark>>> layers = new EnumMap<>(Layer.class);

    SvgLayers(SvgTags tags, String name, SvgPlace place, List<Mark> marks) {
        this.tags = tags;
        this.name = name;
        this.place = place;
        this.texts = HatchLines.keepOff(marks, place.unitsPerMm());
        for (var mark : marks) {
            layers.computeIfAbsent(mark.pen().layer(), none -> new LinkedHashMap<>())
                    .computeIfAbsent(mark.pen().part(), none -> new ArrayList<>())
                    .add(mark);
        }
    }

    void write() throws XMLStreamException {
        for (var layer : layers.entrySet()) {
            layer(layer.getKey(), layer.getValue());
        }
    }

    private void layer(Layer layer, Map<String, List<Mark>> parts) throws XMLStreamException {
        var id = name + "-" + layer.words();
        tags.open("g");
        tags.attribute("id", tags.id(id));
        tags.attribute("data-layer", layer.words());
        tags.attribute("fill", "none");
        tags.attribute("stroke", SvgMarks.colour(layer));
        tags.attribute("stroke-width", SvgPlace.number(layer.widthMm()));
        tags.attribute("stroke-linejoin", "round");
        if (layer.type() != LineType.CONTINUOUS) {
            tags.attribute("stroke-dasharray", dashes(layer.type(), layer.widthMm()));
        }
        tags.element("title", "", layer.words());
        for (var part : parts.entrySet()) {
            var marks = new SvgMarks(tags, place, texts);
            if (!part.getKey().isEmpty()) {
                tags.open("g");
                tags.attribute("id", tags.id(id + "-" + part.getKey()));
                tags.attribute("data-part", part.getKey());
                tags.element("title", "", part.getKey());
            }
            for (var mark : part.getValue()) {
                marks.write(mark);
            }
            if (!part.getKey().isEmpty()) {
                tags.close();
            }
        }
        tags.close();
    }

    static String dashes(LineType type, double widthMm) {
        return type.patternMm(widthMm).stream().map(SvgPlace::number).collect(Collectors.joining(" "));
    }
}
