"""Opens inside templates and cuts them once more, by shapely: an opening shrunk by the guide's radius is where the guide's middle can be; that, grown by the
cutter's, is what the cutter takes. For each: [path, guide diameter, cutter diameter, d, how much may be rounded beside reliefs]."""
import json
import sys

import ezdxf
from ezdxf.path import make_path
from shapely.geometry import Polygon

FINE = 0.0005


def lines(entity):
    points = [(p.x, p.y) for p in make_path(entity).flattening(FINE)]
    if entity.closed and points[0] != points[-1]:
        points.append(points[0])
    return points


def apart(a, b):
    """How far places of one ring, half a millimetre apart, are from another at most."""
    steps = max(8, int(a.length / 0.5))
    return max(b.distance(a.interpolate(i * a.length / steps)) for i in range(steps))


def read(path, guide, cutter, d, rounded):
    document = ezdxf.readfile(path)
    auditor = document.audit()
    layers = {}
    for entity in document.modelspace().query("LWPOLYLINE POLYLINE"):
        layers.setdefault(entity.dxf.layer, []).append((bool(entity.closed), lines(entity)))
    ring = {name: [Polygon(points) for closed, points in found if closed] for name, found in layers.items()}
    plates, openings = ring["OUTER-EDGE"], ring["INNER-EDGE"]
    buffered, deviation, taken, paired = [], [], [], 0
    for edge in ring["GUIDED-EDGE"]:
        # The finished recess that it belongs to.
        part = max(ring["PART"], key=lambda one: one.intersection(edge).area)
        paired += any(edge.exterior.equals_exact(one.exterior, 1e-6) for one in openings)
        moved = part.buffer(-d, 400)
        # Within the openings' own rounding, both ways.
        buffered.append(max(apart(edge.exterior, moved.exterior), apart(moved.exterior, edge.exterior)))
        cut = edge.buffer(-guide / 2, 400).buffer(cutter / 2, 400)
        deviation.append(apart(part.exterior, cut.exterior))
        taken.append(max([0] + [part.exterior.distance(p) for p in sampled(cut.exterior) if not part.contains(p)]))
    spans = [max(one.bounds[3] - one.bounds[1], 0) for one in plates]
    return {
        "errors": len(auditor.errors),
        "closed": {name: [closed for closed, _ in found] for name, found in layers.items()},
        "buffered": buffered,
        "deviation": deviation,
        "taken": taken,
        "paired": paired,
        "onPlates": all(any(plate.contains(one) for plate in plates) for one in openings),
        "web": min(
            [1e9]
            + [a.distance(b) for i, a in enumerate(openings) for b in openings[i + 1 :]]
        ),
        "plates": len(plates),
        "heights": spans,
        "bores": {name: len(found) for name, found in ring.items() if name.startswith("BORE-")},
        "texts": [text.dxf.text for text in document.modelspace().query("TEXT")],
        "rounded": rounded,
    }


def sampled(exterior):
    steps = max(8, int(exterior.length / 0.5))
    return [exterior.interpolate(i * exterior.length / steps) for i in range(steps)]


print(json.dumps([read(*job) for job in json.loads(sys.argv[1])]))
