"""Prints what ezdxf, a DXF library of its own, reads from files: one thing a line, tabs between."""

import math
import sys

import ezdxf
from ezdxf import path, recover


def say(*words):
    print(*words, sep="\t")


def edges(polyline):
    """Lines and arcs as ezdxf makes them from vertices and bulges, in order of the vertices."""
    return list(polyline.virtual_entities())


def part_of_area(edge, reverse):
    """Green's theorem, half of the integral of x dy - y dx along one edge."""
    if edge.dxftype() == "LINE":
        a, b = edge.dxf.start, edge.dxf.end
        return (a.x * b.y - b.x * a.y) / 2
    centre, radius = edge.dxf.center, edge.dxf.radius
    start = math.radians(edge.dxf.start_angle)
    end = math.radians(edge.dxf.end_angle)
    if end <= start:
        end += 2 * math.pi
    area = (
        radius * centre.x * (math.sin(end) - math.sin(start))
        - radius * centre.y * (math.cos(end) - math.cos(start))
        + radius * radius * (end - start)
    ) / 2
    return -area if reverse else area


def bulges(polyline):
    if polyline.dxftype() == "LWPOLYLINE":
        return [point[4] for point in polyline.get_points()]
    return [vertex.dxf.bulge for vertex in polyline.vertices]


def length_of(edge):
    if edge.dxftype() == "LINE":
        return edge.dxf.start.distance(edge.dxf.end)
    return edge.start_point.distance(edge.end_point)


def corners(polyline):
    if polyline.dxftype() == "LWPOLYLINE":
        return [point[:2] for point in polyline.get_points()]
    return [(at.x, at.y) for at in (vertex.dxf.location for vertex in polyline.vertices)]


def polyline(polyline):
    closed = polyline.closed if polyline.dxftype() == "LWPOLYLINE" else polyline.is_closed
    if closed:
        contour(polyline, closed)
    else:
        say("STROKE", polyline.dxf.layer, *(c for corner in corners(polyline) for c in corner))


def contour(polyline, closed):
    bends = bulges(polyline)
    parts = edges(polyline)
    area = sum(part_of_area(edge, bulge < 0) for edge, bulge in zip(parts, bends))
    shortest = min(length_of(edge) for edge in parts)
    first = parts[0].dxf.start if parts[0].dxftype() == "LINE" else parts[0].start_point
    say("CONTOUR", polyline.dxf.layer, closed, area, len(parts), shortest, first.x, first.y)
    ring = path.make_path(polyline).flattening(0.0005)
    say("RING", polyline.dxf.layer, *(c for point in ring for c in (point.x, point.y)))


def entity(e):
    if e.dxftype() in ("LWPOLYLINE", "POLYLINE"):
        polyline(e)
    elif e.dxftype() == "CIRCLE":
        say("CIRCLE", e.dxf.layer, e.dxf.center.x, e.dxf.center.y, e.dxf.radius)
    elif e.dxftype() == "LINE":
        say("LINE", e.dxf.layer, e.dxf.start.x, e.dxf.start.y, e.dxf.end.x, e.dxf.end.y)
    elif e.dxftype() == "TEXT":
        say("TEXT", e.dxf.layer, e.dxf.insert.x, e.dxf.insert.y, e.dxf.height, e.plain_text())
    else:
        say("OTHER", e.dxf.layer, e.dxftype())


def read(name):
    say("FILE", name)
    strict = ezdxf.readfile(name)
    audit = strict.audit()
    # Recover mode alone resolves \U+nnnn in text.
    document, loading = recover.readfile(name)
    for found in audit.errors + audit.fixes + loading.errors + loading.fixes:
        say("FAULT", found.code, found.message)
    say("VERSION", document.dxfversion)
    say("UNITS", document.header.get("$INSUNITS", 0), document.header.get("$MEASUREMENT", -1))
    say("EXTENT", *document.header["$EXTMIN"][:2], *document.header["$EXTMAX"][:2])
    for layer in document.layers:
        say("LAYER", layer.dxf.name, layer.color)
    for e in document.modelspace():
        entity(e)


for name in sys.argv[1:]:
    read(name)
