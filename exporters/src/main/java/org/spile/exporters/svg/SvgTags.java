package org.spile.exporters.svg;

import java.util.LinkedHashSet;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.spile.exporters.drawing.Lettering;

/** The XML writer, one element a line, with ids that never repeat and words without control characters. */
final class SvgTags {
    private final XMLStreamWriter xml;
    private final Set<String> ids = new LinkedHashSet<>();

    SvgTags(XMLStreamWriter xml) {
        this.xml = xml;
    }

    void start() throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
    }

    void end() throws XMLStreamException {
        xml.writeCharacters("\n");
        xml.writeEndDocument();
        xml.flush();
    }

    void open(String name) throws XMLStreamException {
        xml.writeCharacters("\n");
        xml.writeStartElement(name);
    }

    /** An element without content; its attributes follow, and nothing closes it. */
    void empty(String name) throws XMLStreamException {
        xml.writeCharacters("\n");
        xml.writeEmptyElement(name);
    }

    void close() throws XMLStreamException {
        xml.writeEndElement();
    }

    void attribute(String name, String value) throws XMLStreamException {
        xml.writeAttribute(name, Lettering.printable(value));
    }

    void words(String words) throws XMLStreamException {
        xml.writeCharacters(Lettering.printable(words));
    }

    /** An element with words in it; without an id if that is empty. */
    void element(String name, String id, String words) throws XMLStreamException {
        open(name);
        if (!id.isEmpty()) {
            attribute("id", id);
        }
        words(words);
        close();
    }

    /** An id of letters, digits and hyphens that no other element has; asked for once an element. */
    String id(String wanted) {
        var plain = wanted.replaceAll("[^A-Za-z0-9_-]", "-");
        var id = plain;
        for (var n = 2; !ids.add(id); n++) {
            id = plain + "-" + n;
        }
        return id;
    }
}
