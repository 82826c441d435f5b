"""Loads a DXF strictly, audits it, and prints what was found, one fact a line, for a test to compare."""
import math
import sys

import ezdxf
from ezdxf.lldxf.encoding import decode_dxf_unicode
from ezdxf.math import Vec3


def main(path):
    doc = ezdxf.readfile(path)  # not the recovering loader: a file that needs repair is refused
    auditor = doc.audit()
    for error in list(auditor.errors) + list(auditor.fixes):
        print("fault", error.code, error.message)
    print("version", doc.dxfversion)
    print("units", doc.header["$INSUNITS"], doc.header["$MEASUREMENT"])
    for layout in doc.layouts:
        print("layout", layout.name)
    for layer in doc.layers:
        print("layer", layer.dxf.name, layer.dxf.linetype, layer.dxf.lineweight)
    space = doc.modelspace()
    for text in space.query("TEXT"):
        print("text", decode_dxf_unicode(text.plain_text()))
    for dimension in space.query("DIMENSION"):
        if dimension.dimtype == 6:
            way = Vec3(dimension.dxf.defpoint2) - Vec3(dimension.dxf.defpoint)
            measured = abs(way.x if dimension.dxf.dimtype & 64 else way.y)
        else:
            measured = abs(dimension.get_measurement())
        block = doc.blocks.get(dimension.dxf.geometry)
        shown = [e.plain_text() for e in block if e.dxftype() == "MTEXT"]
        print("dimension %.6f %.6f %s" % (measured, dimension.dxf.actual_measurement, "|".join(shown)))
    for insert in space.query("INSERT"):
        for attribute in insert.attribs:
            print("attribute", attribute.dxf.tag, attribute.dxf.text)
    for arc in space.query("ARC"):
        print("arc %.6f %.6f %.6f" % (arc.dxf.radius, arc.dxf.start_angle, arc.dxf.end_angle))
    for hatch in space.query("HATCH"):
        lines = len(hatch.pattern.lines) if hatch.pattern else 0
        print("hatch", hatch.dxf.pattern_name, lines, len(hatch.paths))
    parts = set()
    for entity in space:
        if entity.has_xdata("SPILE"):
            parts.update(tag.value for tag in entity.get_xdata("SPILE") if tag.code == 1000)
    for part in sorted(parts):
        print("data", part)
    for layout in doc.layouts:
        if layout.name == "Model":
            continue
        for port in layout.query("VIEWPORT"):
            if port.dxf.id > 1:
                print("viewport %s %.6f" % (layout.name, port.dxf.view_height / port.dxf.height))
                if not math.isfinite(port.dxf.view_height):
                    print("fault viewport of no height")


main(sys.argv[1])
