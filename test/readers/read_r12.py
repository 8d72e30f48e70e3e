"""Opens pairs of DXF files, a later one and its R12, with ezdxf and says how they differ: version, audit, paths with their areas by shapely, texts.

Usage: read_r12.py LATER=R12 ... Prints a list of { version, errors, paths, worst }.
"""
import json, math, sys

import ezdxf
from ezdxf import path as ezpath
from shapely.geometry import Polygon


def lines(document, kind):
    found = []
    for entity in document.modelspace().query(kind):
        points = [(p.x, p.y) for p in ezpath.make_path(entity).flattening(0.002)]
        closed = entity.is_closed
        area = Polygon(points).area if closed and len(points) > 3 else 0
        length = sum(math.dist(a, b) for a, b in zip(points, points[1:]))
        found.append((entity.dxf.layer, closed, area, length, points[0]))
    # The later file has its entities layer by layer.
    return sorted(found, key=lambda row: row[0])


def texts(document):
    return [(t.dxf.layer, t.dxf.text, t.dxf.height, t.dxf.rotation, t.dxf.halign, tuple(t.dxf.insert)[:2]) for t in document.modelspace().query("TEXT")]


rows = []
for pair in sys.argv[1:]:
    later, old = (ezdxf.readfile(file) for file in pair.split("="))
    auditor = old.audit()
    a, b = lines(later, "LWPOLYLINE"), lines(old, "POLYLINE")
    same = [p[:2] for p in a] == [p[:2] for p in b]
    rows.append({
        "version": old.dxfversion,
        "errors": [e.message for e in auditor.errors] + [e.message for e in auditor.fixes],
        "kinds": sorted({e.dxftype() for e in old.modelspace()}),
        "paths": len(b),
        "bulged": sum(1 for e in old.modelspace().query("POLYLINE") for v in e.vertices if v.dxf.bulge != 0),
        "worst": max(max(abs(p[2] - q[2]) / max(p[3], 1), abs(p[3] - q[3]), math.dist(p[4], q[4])) for p, q in zip(a, b)) if same else 1e9,
        "texts": texts(later) == texts(old),
        "colours": sorted({e.dxf.color for e in old.modelspace()}),
    })
print(json.dumps(rows))
