"""Opens a DXF of a part's saw lines with ezdxf and measures it with shapely, as JSON: the lines against the part grown by given distances."""
import json
import math
import sys

import ezdxf
from ezdxf import path as ezpath
from shapely.geometry import LineString, Point, Polygon
from shapely.ops import unary_union


def flattened(entity):
    points = [(p.x, p.y) for p in ezpath.make_path(entity).flattening(0.0005)]
    if entity.closed and math.dist(points[0], points[-1]) < 1e-6:
        points.pop()
    return points


def places(line, step=0.5):
    count = max(2, math.ceil(line.length / step))
    return [line.interpolate(i / count, normalized=True) for i in range(count + 1)]


def describe(file, wanted, joint):
    document = ezdxf.readfile(file)
    auditor = document.audit()
    layer = lambda name: list(document.modelspace().query(f"LWPOLYLINE[layer=='{name}']"))
    part = Polygon(flattened(layer("PART")[0]))
    blank = Polygon(flattened(layer("SCRIBE")[0]))
    left, low, right, high = blank.bounds
    on_edge = lambda p: blank.exterior.distance(Point(p)) < 1e-5
    lines = [LineString(flattened(e)) for e in layer("SAW-LINE")]
    ends = lambda l: (l.coords[0], l.coords[-1])
    is_round = lambda l: math.dist(*ends(l)) < 1e-3
    through = [l for l in lines if is_round(l) or all(on_edge(p) for p in ends(l))]
    cuts = [l for l in lines if l not in through]
    # A wing's joint line is the straight one that runs along the blank more than across it.
    along = lambda l: abs(l.coords[1][0] - l.coords[0][0]) > abs(l.coords[1][1] - l.coords[0][1])
    joints = [l for l in through if joint and len(l.coords) == 2 and along(l)]
    square = [l for l in through if l not in joints]
    grown = part.buffer(wanted, resolution=256, join_style=2, mitre_limit=2)
    inner = blank.buffer(-0.01)
    # A wing's rim line runs on through its joint's, and a board's lines past its ends: there nothing is measured against the part.
    x1, y1, x2, y2 = part.bounds
    middle = part.centroid

    def turns(j, p):
        (ax, ay), (bx, by) = j.coords[0], j.coords[1]
        return (bx - ax) * (p.y - ay) - (by - ay) * (p.x - ax)

    # A board's lines cross one another where it has a corner, and two of those are rounded.
    is_board = not joint and not any(is_round(l) for l in square)
    corners = [Point(x2, y1), Point(x2, y2)]
    fair = lambda p: not is_board or (part.distance(p) < 1.38 * wanted and all(c.distance(p) > 10 for c in corners))
    past = lambda p: any(turns(j, p) * turns(j, middle) <= 0 or j.distance(p) < 3 * wanted for j in joints)
    beside = lambda p: x1 - wanted - 0.01 < p.x < x2 + wanted + 0.01 and y1 - wanted - 0.01 < p.y < y2 + wanted + 0.01 and not past(p) and fair(p)
    near = [grown.exterior.distance(p) for l in square for p in places(l) if beside(p) and inner.contains(p)]
    # The other way round: of the grown outline all but its joint's side has a line on it, where that lies in the blank.
    free = grown.exterior.difference(unary_union([j.buffer(3 * wanted) for j in joints])) if joints else grown.exterior
    pieces = list(free.geoms) if hasattr(free, "geoms") else [free]
    taken = unary_union(square)
    missed = [taken.distance(p) for l in pieces for p in places(l) if square and inner.contains(p) and fair(p)]
    return {
        "errors": [e.message for e in auditor.errors],
        "fixes": [e.message for e in auditor.fixes],
        "outside": max(l.difference(blank.buffer(1e-5)).length for l in lines),
        "lines": len(square),
        "off": max(near, default=99),
        "measured": len(near),
        "missed": max(missed, default=99),
        "joints": [
            {
                "away": part.distance(j),
                "turn": math.degrees(math.atan2(j.coords[1][1] - j.coords[0][1], j.coords[1][0] - j.coords[0][0])),
            }
            for j in joints
        ],
        "reliefs": [
            {
                "end": min(s.distance(Point(p)) for p in ends(c) for s in through),
                "start": min(blank.exterior.distance(Point(p)) for p in ends(c)),
                "part": part.distance(c),
            }
            for c in cuts
        ],
        "bores": [
            {"diameter": float(e.dxf.layer[5:].replace("_", ".")), "wood": min(l.distance(Polygon(flattened(e))) for l in lines)}
            for e in document.modelspace().query("LWPOLYLINE")
            if e.dxf.layer.startswith("BORE-")
        ],
        "blank": [right - left, high - low],
        "texts": [e.dxf.text for e in document.modelspace().query("TEXT")],
    }


given = json.loads(sys.argv[1])
print(json.dumps({one["file"]: describe(one["file"], one["wanted"], one["joint"]) for one in given}))
