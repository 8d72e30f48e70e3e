"""Opens tailpieces' DXF files with ezdxf: by file its audit's errors, its bores, and its outer edges by shapely, as JSON."""
import json
import sys

import ezdxf
from ezdxf import path
from shapely.geometry import Point, Polygon


def ring(entity):
    return Polygon([(at.x, at.y) for at in path.make_path(entity).flattening(0.0005)])


def bore(entity):
    """Where its middle is and how wide it is, along and across."""
    left, low, right, high = ring(entity).bounds
    return {
        "layer": entity.dxf.layer,
        "x": (left + right) / 2,
        "y": (low + high) / 2,
        "wide": [right - left, high - low],
    }


def describe(file):
    document = ezdxf.readfile(file)
    entities = list(document.modelspace())
    outer = [entity for entity in entities if entity.dxf.layer == "OUTER-EDGE"]
    return {
        "errors": len(document.audit().errors),
        "outer": [
            {
                "closed": entity.closed,
                "valid": ring(entity).is_valid,
                "area": ring(entity).area,
                "bounds": ring(entity).bounds,
            }
            for entity in outer
        ],
        "bores": [bore(entity) for entity in entities if entity.dxf.layer.startswith("BORE-")],
        "texts": [
            {"text": entity.dxf.text, "layer": entity.dxf.layer}
            for entity in entities
            if entity.dxftype() == "TEXT"
        ],
    }


def away(file, places):
    """How far each place is from the outer edge."""
    entities = ezdxf.readfile(file).modelspace().query("LWPOLYLINE[layer=='OUTER-EDGE']")
    return [ring(entities[0]).exterior.distance(Point(place)) for place in places]


jobs = json.loads(sys.argv[1])
print(json.dumps([{**describe(file), "away": away(file, places)} for file, places in jobs]))
