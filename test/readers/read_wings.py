"""Opens wings' and joints' DXF files with ezdxf: by file its audit's errors, rings by layer with their corners, bores and scribed lines, as JSON."""
import json
import sys

import ezdxf
from ezdxf import path
from shapely.geometry import Polygon


def corners(entity):
    return [(at.x, at.y) for at in path.make_path(entity).flattening(0.0005)]


def describe(file):
    document = ezdxf.readfile(file)
    entities = [entity for entity in document.modelspace() if entity.dxftype() == "LWPOLYLINE"]

    def on(layer):
        return [entity for entity in entities if entity.dxf.layer.startswith(layer)]

    rings = {
        layer: [
            {
                "closed": entity.closed,
                "valid": Polygon(corners(entity)).is_valid,
                "area": Polygon(corners(entity)).area,
                "longest": longest(entity),
            }
            for entity in on(layer)
        ]
        for layer in ["OUTER-EDGE", "PART"]
    }
    return {
        "errors": len(document.audit().errors),
        "rings": rings,
        "bores": [list(Polygon(corners(entity)).centroid.coords[0]) + [entity.dxf.layer] for entity in on("BORE-")],
        "scribed": [corners(entity) for entity in on("SCRIBE")],
    }


def longest(entity):
    """The longest straight edge of a ring: its two ends."""
    points = [(x, y, bulge) for x, y, bulge in entity.get_points("xyb")]
    edges = [
        ((a[0], a[1]), (b[0], b[1]))
        for a, b in zip(points, points[1:] + points[:1])
        if a[2] == 0
    ]
    return max(edges, key=lambda edge: (edge[0][0] - edge[1][0]) ** 2 + (edge[0][1] - edge[1][1]) ** 2)


print(json.dumps([describe(file) for file in sys.argv[1:]]))
