"""Reads binary STLs with numpy and says where lines along z pass through them, as JSON: FILE x,y x,y ... (-- FILE ...)."""

import json
import sys

import numpy


def triangles(path):
    data = open(path, "rb").read()
    count = int.from_bytes(data[80:84], "little")
    kinds = numpy.dtype([("numbers", "<f4", 12), ("rest", "<u2")])
    return numpy.frombuffer(data, kinds, count, 84)["numbers"][:, 3:].reshape(-1, 3, 3).astype(float)


def heights(mesh, x, y):
    """By the plane of each triangle whose shadow holds (x, y)."""
    a, b, c = mesh[:, 0], mesh[:, 1], mesh[:, 2]

    def side(p, q):
        return (q[:, 0] - p[:, 0]) * (y - p[:, 1]) - (q[:, 1] - p[:, 1]) * (x - p[:, 0])

    u, v, w = side(b, c), side(c, a), side(a, b)
    whole = u + v + w
    hit = (numpy.sign(u) == numpy.sign(v)) & (numpy.sign(v) == numpy.sign(w)) & (whole != 0)
    z = (u * a[:, 2] + v * b[:, 2] + w * c[:, 2])[hit] / whole[hit]
    return sorted(set(numpy.round(z, 5).tolist()))


def main():
    found = {}
    jobs = " ".join(sys.argv[1:]).split(" -- ")
    for job in jobs:
        path, *places = job.split(" ")
        mesh = triangles(path)
        found[path] = {
            "least": mesh.min(axis=(0, 1)).tolist(),
            "most": mesh.max(axis=(0, 1)).tolist(),
            "heights": [heights(mesh, *map(float, place.split(","))) for place in places],
        }
    print(json.dumps(found))


main()
