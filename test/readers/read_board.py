"""What a fingerboard's DXFs hold, as ezdxf opens them: every path with its arcs' radii and centres, every circle-like bore, the heights of an outline at places, the words."""
import json
import math
import sys

import ezdxf
from ezdxf.math import bulge_to_arc


def arcs_of(points):
    """Centre and radius of every arc of a closed or open run of (x, y, bulge)."""
    found = []
    for (ax, ay, bulge), (bx, by, _) in points:
        if bulge != 0:
            centre, _, _, radius = bulge_to_arc((ax, ay), (bx, by), bulge)
            found.append({"x": centre.x, "y": centre.y, "radius": radius, "bulge": bulge})
    return found


def top_at(pairs, x):
    """The highest place of an outline over x, by solving each of its lines and circles."""
    best = None
    for (ax, ay, bulge), (bx, by, _) in pairs:
        low, high = min(ax, bx), max(ax, bx)
        if not low - 1e-9 <= x <= high + 1e-9 or high - low < 1e-9:
            continue
        if abs(bulge) < 1e-9:
            y = ay + (by - ay) * (x - ax) / (bx - ax)
        else:
            centre, _, _, radius = bulge_to_arc((ax, ay), (bx, by), bulge)
            up = math.sqrt(max(0, radius**2 - (x - centre.x) ** 2))
            chord = ay + (by - ay) * (x - ax) / (bx - ax)
            y = min((centre.y + up, centre.y - up), key=lambda one: abs(one - chord))
        best = y if best is None else max(best, y)
    return best


def read(path, places):
    document = ezdxf.readfile(path)
    paths, texts = [], []
    for entity in document.modelspace():
        if entity.dxftype() == "TEXT":
            texts.append(entity.dxf.text)
        if entity.dxftype() != "LWPOLYLINE":
            continue
        points = [tuple(point) for point in entity.get_points("xyb")]
        ends = points[1:] + points[:1] if entity.closed else points[1:]
        pairs = list(zip(points, ends))
        xs, ys = [p[0] for p in points], [p[1] for p in points]
        row = {"layer": entity.dxf.layer, "closed": bool(entity.closed), "corners": len(points), "arcs": arcs_of(pairs)}
        row["bounds"] = [min(xs), min(ys), max(xs), max(ys)]
        if entity.dxf.layer == "OUTER-EDGE":
            row["tops"] = [top_at(pairs, min(xs) + (max(xs) - min(xs)) * share) for share in places]
        paths.append(row)
    return {"errors": len(document.audit().errors), "paths": paths, "texts": texts}


shares = [i / 54 for i in range(55)]
print(json.dumps({path: read(path, shares) for path in sys.argv[1:]}))
