# Reads veneers' drawings with ezdxf and measures them with shapely, which share no line with what wrote them.
# In: a list of [file, the part's own file, how far the two leaves are drawn apart, whether the veneer is seen from the part's back].
import json
import math
import sys

import ezdxf
from ezdxf.path import make_path
from shapely.geometry import Point, Polygon
from shapely.affinity import translate
from shapely.ops import unary_union

results = []
for name, outline, apart, turned in json.loads(sys.argv[1]):
    document = ezdxf.readfile(name)
    polygons, grains = [], []
    for entity in document.modelspace():
        if entity.dxf.layer not in ("OUTER-EDGE", "SCRIBE"):
            continue
        points = [(p.x, p.y) for p in make_path(entity).flattening(0.001)]
        if entity.dxf.layer == "OUTER-EDGE":
            polygons.append(Polygon(points))
        else:
            (ax, ay), (bx, by) = points[0], points[-1]
            grains.append({"angle": math.degrees(math.atan2(by - ay, bx - ax)), "inside": 0})
            for polygon in polygons:
                if polygon.contains(Point(ax, ay)) and polygon.contains(Point(bx, by)):
                    grains[-1]["inside"] = 1
    edges = [e for e in ezdxf.readfile(outline).modelspace() if e.dxf.layer == "OUTER-EDGE"]
    part = Polygon([(p.x, -p.y if turned else p.y) for p in make_path(edges[0]).flattening(0.001)])
    if len(polygons) == 2:
        whole = unary_union([translate(p, 0, -apart / 2 if p.centroid.y > 0 else apart / 2) for p in polygons])
    else:
        whole = polygons[0]
    rim = [Point(c) for c in whole.exterior.coords]
    away = [part.distance(p) for p in rim if abs(p.y) > 1e-3 or len(polygons) == 1]
    results.append(
        {
            "errors": len(document.audit().errors),
            "areas": [p.area for p in polygons],
            "valid": all(p.is_valid for p in polygons),
            "least": min(away),
            "most": max(away),
            "off": whole.symmetric_difference(part.buffer(sum(away) / len(away), 256)).area,
            "grains": grains,
        }
    )
print(json.dumps(results))
