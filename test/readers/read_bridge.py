"""What bridge-place and bridge-side of each folder say, as ezdxf opens them.

The side's lean and thicknesses are taken from its cut outline: the face toward the tail, the edge on the core, the edge at the top. The
place gives the boxes of what is scribed, bored and sunk, and the notes.
"""
import json
import math
import sys

import ezdxf
from ezdxf import path


def corners(document, layer):
    (entity,) = [one for one in document.modelspace() if one.dxf.layer == layer]
    return [(round(at[0], 9), round(at[1], 9)) for at in entity.get_points("xy")]


def side(document):
    points = corners(document, "OUTER-EDGE")
    low, high = min(y for _, y in points), max(y for _, y in points)
    foot = sorted(x for x, y in points if y - low < 1e-6)
    top = sorted(x for x, y in points if high - y < 1e-6)
    return {
        "foot": foot[-1] - foot[0],
        "top": top[-1] - top[0],
        "height": high - low,
        "tilt": math.degrees(math.atan2(top[-1] - foot[-1], high - low)),
    }


def box(entity):
    places = list(path.make_path(entity).flattening(0.0005))
    xs, ys = [at.x for at in places], [at.y for at in places]
    return [entity.dxf.layer, path.make_path(entity).is_closed, min(xs), max(xs), min(ys), max(ys)]


def place(document):
    entities = [one for one in document.modelspace() if one.dxftype() != "TEXT"]
    return {
        "boxes": [box(one) for one in entities if one.dxf.layer != "NOTE"],
        "texts": [one.dxf.text for one in document.modelspace() if one.dxftype() == "TEXT"],
    }


read = {}
for folder in sys.argv[1:]:
    documents = {name: ezdxf.readfile(f"{folder}/bridge-{name}.dxf") for name in ("place", "side")}
    errors = sum(len(document.audit().errors) for document in documents.values())
    read[folder] = {"errors": errors, **side(documents["side"]), **place(documents["place"])}
print(json.dumps(read))
