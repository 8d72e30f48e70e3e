"""Opens DXF files with ezdxf and says what it finds, as JSON: audit, units, layers, paths, areas by shapely, widths."""
import json
import math
import sys

import ezdxf
from ezdxf import path as ezpath
from shapely.geometry import LineString, Polygon


def flattened(entity):
    """The entity as a fine polygon line; a last point that is the first but for the noise of its arc is left out."""
    points = [(p.x, p.y) for p in ezpath.make_path(entity).flattening(0.0005)]
    if entity.closed and math.dist(points[0], points[-1]) < 1e-6:
        points.pop()
    return points


def width_at(entity, x):
    """The height of the outline's cut along the vertical line at x."""
    points = flattened(entity)
    line = LineString([(x, -1e4), (x, 1e4)])
    cut = Polygon(points).intersection(line)
    return cut.length


def describe(file, core):
    document = ezdxf.readfile(file)
    auditor = document.audit()
    paths = []
    texts = []
    for entity in document.modelspace():
        if entity.dxftype() == "TEXT":
            texts.append({"text": entity.dxf.text, "height": entity.dxf.height, "layer": entity.dxf.layer})
            continue
        if entity.dxftype() != "LWPOLYLINE":
            paths.append({"layer": entity.dxf.layer, "type": entity.dxftype()})
            continue
        points = flattened(entity)
        row = {
            "type": "LWPOLYLINE",
            "layer": entity.dxf.layer,
            "closed": entity.closed,
            "colour": entity.dxf.color,
            "bulges": [p[2] for p in entity.get_points("xyb")],
            "points": [list(p) for p in entity.get_points("xy")],
            "length": sum(math.dist(a, b) for a, b in zip(points, points[1:])),
        }
        if entity.closed and len(points) > 3:
            polygon = Polygon(points)
            row.update(area=polygon.area, valid=polygon.is_valid, bounds=polygon.bounds)
        paths.append(row)
    outer = [e for e in document.modelspace().query("LWPOLYLINE[layer=='OUTER-EDGE']")]
    return {
        "errors": [e.message for e in auditor.errors],
        "fixes": [e.message for e in auditor.fixes],
        "units": document.header["$INSUNITS"],
        "measurement": document.header["$MEASUREMENT"],
        "extents": [list(document.header["$EXTMIN"])[:2], list(document.header["$EXTMAX"])[:2]],
        "paths": paths,
        "texts": texts,
        "widths": {
            **{str(x): width_at(outer[0], x) for x in (0.001, 50, 100, 150, 200, 250)},
            **({"core": width_at(outer[0], core)} if core else {}),
        }
        if outer
        else {},
    }


files = sys.argv[1:]
cores = {}
if "--core" in files:
    split = files.index("--core")
    cores = {name: float(x) for name, x in (pair.rsplit("=", 1) for pair in files[split + 1 :])}
    files = files[:split]
print(json.dumps({file: describe(file, cores.get(file)) for file in files}))
