"""Opens bodies' DXF files with ezdxf: by file its audit's errors, outlines by layer measured by shapely, and its texts, as JSON."""
import json
import sys

import ezdxf
from ezdxf import path
from shapely.geometry import LineString, Polygon


def ring(entity):
    return Polygon([(at.x, at.y) for at in path.make_path(entity).flattening(0.0005)])


def width_at(shape, x):
    """From the lowest to the highest place of a shape on an upright line."""
    left, low, right, high = shape.intersection(LineString([(x, -1000), (x, 1000)])).bounds
    return high - low


def place(entity):
    return entity.dxf.insert.x, entity.dxf.insert.y


def describe(file, places):
    document = ezdxf.readfile(file)
    entities = list(document.modelspace())
    cut = [entity for entity in entities if entity.dxf.layer == "OUTER-EDGE" or entity.dxf.layer.startswith("RECESS-")]
    outer = [ring(entity) for entity in cut if entity.dxf.layer == "OUTER-EDGE"]
    sunk = [ring(entity) for entity in cut if entity.dxf.layer.startswith("RECESS-")]
    return {
        "errors": len(document.audit().errors),
        "paths": [
            {
                "layer": entity.dxf.layer,
                "closed": entity.closed,
                "valid": ring(entity).is_valid,
                "area": ring(entity).area,
                "bounds": ring(entity).bounds,
            }
            for entity in cut
        ],
        "widths": [width_at(outer[0], x) for x in places],
        "skew": outer[0].centroid.y,
        "down": [
            entity.dxf.text
            for entity in sorted(
                (entity for entity in entities if entity.dxftype() == "TEXT" and place(entity)[0] > outer[0].bounds[2]),
                key=lambda entity: -place(entity)[1],
            )
        ],
        "texts": [entity.dxf.text for entity in entities if entity.dxftype() == "TEXT"],
    }


jobs = json.loads(sys.argv[1])
print(json.dumps([describe(file, places) for file, places in jobs]))
