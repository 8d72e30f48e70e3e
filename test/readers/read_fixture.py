"""Opens fixtures and cuts them once more, by shapely: the template grown by the guide's radius is where the guide's middle can't
be; that, grown back by the cutter's, is what the cutter leaves. For each: [path, guide diameter, cutter diameter, d,
lines of the part that this set-up leaves alone or to the hand]."""
import json
import sys

import ezdxf
from ezdxf.path import make_path
from shapely.affinity import scale
from shapely.geometry import LineString, MultiLineString, Polygon

FINE = 0.0005
# Lines to leave out come as chords, which stray by less.
NEAR = 0.004


def lines(entity):
    points = [(p.x, p.y) for p in make_path(entity).flattening(FINE)]
    if entity.closed and points[0] != points[-1]:
        points.append(points[0])
    return points


def read(path, guide, cutter, d, left_alone):
    document = ezdxf.readfile(path)
    auditor = document.audit()
    layers = {}
    for entity in document.modelspace().query("LWPOLYLINE POLYLINE"):
        layers.setdefault(entity.dxf.layer, []).append((bool(entity.closed), lines(entity)))
    part = Polygon(layers["PART"][0][1])
    outer = Polygon(layers["OUTER-EDGE"][0][1])
    edge = LineString(layers["GUIDED-EDGE"][0][1])
    # The guided edge beside the part's own cut edges: run-in and run-out lie beyond the joined edge.
    along = [edge.interpolate(s) for s in range(0, int(edge.length) + 1)]
    # What is cut of the part's outline: all that the edge, moved back by d, lies on.
    rim = part.exterior
    alone = MultiLineString(left_alone)
    foot = [rim.interpolate(rim.project(p)) for p in along]
    beside = [i for i, at in enumerate(foot) if alone.distance(at) > NEAR]
    first, last = beside[0], beside[-1]
    buffered = max(abs(along[i].distance(foot[i]) - abs(d)) for i in beside)
    inside = sum(part.contains(along[i]) for i in range(first + 2, last - 1))
    # The cut itself.
    barred = outer.buffer(guide / 2, 200)
    left = barred.buffer(-cutter / 2, 200)
    cut = []
    steps = int(rim.length / 0.5)
    for i in range(steps):
        p = rim.interpolate(i * rim.length / steps)
        if alone.distance(p) > NEAR:
            cut.append(left.exterior.distance(p))
    # The circle that the cutter sweeps about the ends of the guided edge and all between.
    swept = edge.buffer(guide / 2 + cutter / 2, 64).difference(left)
    scribed = [Polygon(points) for closed, points in layers.get("SCRIBE", []) if closed]
    bores = {
        name: [Polygon(points) for closed, points in found if closed]
        for name, found in layers.items()
        if name.startswith("BORE-")
    }
    every = scribed + [bore for found in bores.values() for bore in found]
    return {
        "errors": len(auditor.errors),
        "closed": {name: [closed for closed, _ in found] for name, found in layers.items()},
        "buffered": buffered,
        "beside": (last - first) / edge.length,
        "inside": inside / max(1, last - first - 3),
        "onOuter": max(outer.exterior.distance(p) for p in along),
        "deviation": max(cut),
        # How far the part turned over about its length would be off itself.
        "turned": max(scale(rim, 1, -1, origin=(0, 0)).distance(rim.interpolate(s)) for s in range(int(rim.length))),
        "tried": len(cut),
        "swept": min(shape.distance(swept) for shape in every),
        "outside": max(shape.difference(outer).area for shape in every),
        "bores": {name: len(found) for name, found in bores.items()},
        "texts": [text.dxf.text for text in document.modelspace().query("TEXT")],
        "extents": list(outer.bounds),
    }


with open(sys.argv[1], encoding="utf-8") as jobs:
    print(json.dumps([read(*job) for job in json.load(jobs)]))
