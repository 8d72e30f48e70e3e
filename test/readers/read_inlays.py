"""Inlays of written DXFs, by ezdxf and shapely: FINGERBOARD INLAYS CUTTER, as often as wanted. How each recess fits what a cutter opens of the design, and the insert the recess."""
import json
import sys

import ezdxf
from ezdxf import path
from shapely.affinity import translate
from shapely.geometry import Polygon

# Chords to a quarter circle, so many that they lie within 1e-4 of it.
fine = 200


def polygons(name, layer):
    found = []
    for entity in ezdxf.readfile(name).modelspace():
        if entity.dxf.layer.startswith(layer) and entity.dxftype() == "LWPOLYLINE":
            found.append(Polygon([(p.x, p.y) for p in path.make_path(entity).flattening(0.0002)]))
    return found


def apart(one, other, count=400):
    """How far places all along one's edge lie from the other's."""
    return [other.exterior.distance(one.exterior.interpolate(at / count, True)) for at in range(count)]


def read(board, inserts, cutter):
    """Each insert laid into the recess that it fits best, by the middle of what a cutter opens of its design."""
    rows = []
    for design, insert in zip(polygons(inserts, "PART"), polygons(inserts, "OUTER-EDGE")):
        opened = design.buffer(-cutter / 2, fine).buffer(cutter / 2, fine)
        fits = []
        # An inlay's recess has many corners, a fret's slot four.
        for recess in (one for one in polygons(board, "RECESS-") if len(one.exterior.coords) > 6):
            dx, dy = recess.centroid.x - opened.centroid.x, recess.centroid.y - opened.centroid.y
            moved, lies = translate(opened, dx, dy), translate(insert, dx, dy)
            gaps, back = apart(lies, recess), apart(recess, lies)
            fits.append(
                {
                    "off": max(apart(recess, moved) + apart(moved, recess)),
                    "gap": [min(gaps), max(gaps)],
                    "back": [min(back), max(back)],
                    "inside": recess.contains(lies),
                    "x": dx + (design.bounds[0] + design.bounds[2]) / 2,
                    "y": dy + (design.bounds[1] + design.bounds[3]) / 2,
                }
            )
        rows.append(min(fits, key=lambda fit: fit["off"]))
    return rows


jobs = [sys.argv[i : i + 3] for i in range(1, len(sys.argv), 3)]
print(json.dumps([read(board, inserts, float(cutter)) for board, inserts, cutter in jobs]))
