"""The middle along x of every recess of a DXF, as ezdxf opens it, by layer; and what its audit found."""
import json
import sys

import ezdxf
from ezdxf import path

document = ezdxf.readfile(sys.argv[1])
middles = []
for entity in document.modelspace():
    if entity.dxf.layer.startswith("RECESS-"):
        across = [at.x for at in path.make_path(entity).flattening(0.01)]
        middles.append([entity.dxf.layer, (min(across) + max(across)) / 2])
audit = document.audit()
print(json.dumps({"errors": len(audit.errors), "middles": sorted(middles, key=lambda one: one[1])}))
