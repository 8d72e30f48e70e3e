"""Opens DXF files of what is sunk into a part's back with ezdxf: by file its audit's errors, and by layer each outline's area, middle and bounds by shapely."""
import json
import math
import sys

import ezdxf
from ezdxf.math import Vec2, bulge_center, bulge_radius
from shapely.geometry import Polygon


def along(start, end, bulge):
    """Places on a line or an arc from its start, without its end; ezdxf's own paths make curves of arcs, which are not round enough here."""
    if bulge == 0:
        return [tuple(start)]
    centre, radius = Vec2(bulge_center(start, end, bulge)), bulge_radius(start, end, bulge)
    begin, sweep = (start - centre).angle, 4 * math.atan(bulge)
    count = max(8, math.ceil(abs(sweep) * radius / 0.02))
    return [tuple(centre + Vec2.from_angle(begin + sweep * i / count, radius)) for i in range(count)]


def ring(entity):
    points = [(Vec2(x, y), bulge) for x, y, bulge in entity.get_points("xyb")]
    places = []
    for i, (start, bulge) in enumerate(points):
        places += along(start, points[(i + 1) % len(points)][0], bulge)
    return Polygon(places)


def measured(entity):
    shape = ring(entity)
    return {
        "layer": entity.dxf.layer,
        "closed": entity.closed,
        "valid": shape.is_valid,
        "area": shape.area,
        "middle": [shape.centroid.x, shape.centroid.y],
        "bounds": shape.bounds,
    }


def describe(file):
    document = ezdxf.readfile(file)
    entities = list(document.modelspace())
    cut = [one for one in entities if one.dxf.layer.split("-")[0] in ("OUTER", "PART", "RECESS", "BORE")]
    return {
        "errors": len(document.audit().errors),
        "shapes": [measured(one) for one in cut],
        "texts": [one.dxf.text for one in entities if one.dxftype() == "TEXT"],
    }


print(json.dumps([describe(file) for file in json.loads(sys.argv[1])]))
