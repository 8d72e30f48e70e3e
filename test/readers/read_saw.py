"""Opens a DXF of saw lines with ezdxf and measures it with shapely, as JSON: distances of lines, part and blank."""
import json
import math
import sys

import ezdxf
from ezdxf import path as ezpath
from shapely.geometry import LineString, Point, Polygon


def flattened(entity):
    points = [(p.x, p.y) for p in ezpath.make_path(entity).flattening(0.0005)]
    if entity.closed and math.dist(points[0], points[-1]) < 1e-6:
        points.pop()
    return points


def places(line, step=0.5):
    count = max(2, math.ceil(line.length / step))
    return [line.interpolate(i / count, normalized=True) for i in range(count + 1)]


def describe(file):
    document = ezdxf.readfile(file)
    auditor = document.audit()
    layer = lambda name: list(document.modelspace().query(f"LWPOLYLINE[layer=='{name}']"))
    part = Polygon(flattened(layer("PART")[0]))
    blank = Polygon(flattened(layer("SCRIBE")[0]))
    lines = [LineString(flattened(e)) for e in layer("SAW-LINE")]
    # A relief cut ends on a saw line; a saw line's both ends are on the blank's edge.
    on_edge = lambda x, y: blank.exterior.distance(Point(x, y)) < 1e-5
    cuts = [l for l in lines if not (on_edge(*l.coords[0]) and on_edge(*l.coords[-1]))]
    saws = [l for l in lines if l not in cuts]
    # A drawing for the left hand is turned over, and its lines then run the other way.
    cuts = [c if on_edge(*c.coords[0]) else LineString(list(c.coords)[::-1]) for c in cuts]
    beside = [
        part.distance(p)
        for l in saws
        for p in places(l)
        if part.bounds[0] + 15 < p.x < part.bounds[2] - 15
    ]
    return {
        "errors": [e.message for e in auditor.errors],
        "fixes": [e.message for e in auditor.fixes],
        "closed": [e.closed for e in layer("SAW-LINE")],
        "nearest": min(beside),
        "usual": sorted(beside)[len(beside) // 2],
        "outside": max(l.difference(blank.buffer(1e-5)).length for l in lines),
        "lines": len(saws),
        "reliefs": [
            {
                "end": min(s.distance(Point(c.coords[-1])) for s in saws),
                "start": blank.exterior.distance(Point(c.coords[0])),
                "crosses": max((c.intersection(s.buffer(1e-4)).length for s in saws), default=0),
                "part": part.distance(c),
            }
            for c in cuts
        ],
        "blank": [blank.bounds[2] - blank.bounds[0], blank.bounds[3] - blank.bounds[1]],
        "texts": [e.dxf.text for e in document.modelspace().query("TEXT")],
        "heights": sorted({e.dxf.height for e in document.modelspace().query("TEXT")}),
    }


print(json.dumps({file: describe(file) for file in sys.argv[1:]}))
