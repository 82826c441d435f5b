package org.spile.samples.layers.wrong.exporters.dxf;

import javax.xml.stream.XMLStreamWriter;

/** A format without XML knows XML. */
record XmlAbroad(XMLStreamWriter out) {}
