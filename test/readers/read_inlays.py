"""Inlays of written DXFs, by ezdxf and shapely: FINGERBOARD INLAYS CUTTER. How the recess fits what a cutter opens of the design, and the insert the recess."""
import json
import sys

import ezdxf
from ezdxf import path
from shapely.affinity import translate
from shapely.geometry import Polygon


def polygons(name, layer):
    found = []
    for entity in ezdxf.readfile(name).modelspace():
        if entity.dxf.layer.startswith(layer) and entity.dxftype() == "LWPOLYLINE":
            found.append(Polygon([(p.x, p.y) for p in path.make_path(entity).flattening(0.0001)]))
    return found


board, inserts, cutter = sys.argv[1], sys.argv[2], float(sys.argv[3])
fine = {"quad_segs": 400}
rows = []
# The recesses of inlays have arcs or many corners; a fret's slot has four.
recesses = [one for one in polygons(board, "RECESS-") if len(one.exterior.coords) > 6]
for recess in recesses:
    best = None
    for design, insert in zip(polygons(inserts, "PART"), polygons(inserts, "OUTER-EDGE")):
        opened = design.buffer(-cutter / 2, **fine).buffer(cutter / 2, **fine)
        dx, dy = recess.centroid.x - opened.centroid.x, recess.centroid.y - opened.centroid.y
        opened, design, insert = (translate(one, dx, dy) for one in (opened, design, insert))
        off = recess.exterior.hausdorff_distance(opened.exterior)
        gaps = [recess.exterior.distance(place) for place in map(lambda at: insert.exterior.interpolate(at / 2000, True), range(2000))]
        back = [insert.exterior.distance(recess.exterior.interpolate(at / 2000, True)) for at in range(2000)]
        row = {"off": off, "least": min(gaps), "most": max(gaps), "inside": recess.contains(insert), "tightest": min(back)}
        row["spill"] = recess.difference(design.buffer(1e-3)).area
        row["x"] = (design.bounds[0] + design.bounds[2]) / 2
        if best is None or off < best["off"]:
            best = row
    rows.append(best)
print(json.dumps(rows))
