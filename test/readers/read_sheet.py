"""What stands on a sheet's SVG, read by another program than wrote it: xml.etree for the file, shapely for what touches what."""
import json
import math
import re
import sys
import xml.etree.ElementTree as tree

from shapely.geometry import LineString, box

SVG = "{http://www.w3.org/2000/svg}"
# DejaVu Sans Mono's own measures: what a letter takes up, as a share of the type's size.
ADVANCE, ASCENT, DESCENT = 0.602, 0.76, 0.15
LEAST_CAP = 0.64


def arc(x1, y1, r, sweep, x2, y2):
    """The points of a circle's arc from one place to another, the shorter way round, in SVG's axes."""
    dx, dy = x2 - x1, y2 - y1
    chord = math.hypot(dx, dy)
    if chord == 0:
        return [(x2, y2)]
    r = max(r, chord / 2)
    off = math.sqrt(max(0.0, r * r - chord * chord / 4))
    side = -1 if sweep == 1 else 1
    cx, cy = (x1 + x2) / 2 + side * dy / chord * off, (y1 + y2) / 2 - side * dx / chord * off
    a1, a2 = math.atan2(y1 - cy, x1 - cx), math.atan2(y2 - cy, x2 - cx)
    turn = (a2 - a1) % (2 * math.pi) if sweep == 1 else -((a1 - a2) % (2 * math.pi))
    n = max(2, int(abs(turn) * r / 0.2) + 2)
    return [(cx + r * math.cos(a1 + turn * k / n), cy + r * math.sin(a1 + turn * k / n)) for k in range(1, n + 1)]


def points(d):
    words = re.findall(r"[MLAZ]|-?\d+(?:\.\d+)?(?:e-?\d+)?", d)
    out, i = [], 0
    while i < len(words):
        op = words[i]
        if op == "Z":
            out.append(out[0])
            i += 1
        elif op == "A":
            r, sweep, x, y = float(words[i + 1]), int(words[i + 5]), float(words[i + 6]), float(words[i + 7])
            if words[i + 4] != "0":
                raise ValueError("an arc the long way round")
            out += arc(*out[-1], r, sweep, x, y)
            i += 8
        else:
            out.append((float(words[i + 1]), float(words[i + 2])))
            i += 3
    return [(x, -y) for x, y in out]


def text_box(e):
    x, y, size = float(e.get("x")), -float(e.get("y")), float(e.get("font-size"))
    # Whichever is longer: as the type runs, or as it is told to.
    long = max(len(e.text) * ADVANCE * size, float(e.get("textLength")))
    start = {"start": 0, "middle": -long / 2, "end": -long}[e.get("text-anchor")]
    up, down = ASCENT * size, DESCENT * size
    turned = e.get("transform")
    if turned is None:
        return box(x + start, y - down, x + start + long, y + up)
    if not turned.startswith("rotate(-90 "):
        raise ValueError(turned)
    return box(x - up, y + start, x + down, y + start + long)


def near(a, b):
    return a[0] <= b[2] and b[0] <= a[2] and a[1] <= b[3] and b[1] <= a[3]


def read(file):
    root = tree.parse(file).getroot()
    width, height = float(root.get("width")[:-2]), float(root.get("height")[:-2])
    assert root.get("width").endswith("mm") and root.get("viewBox") == f"0 {-height:g} {width:g} {height:g}"
    lines = [(e.get("data-weight"), LineString(points(e.get("d")))) for e in root.iter(f"{SVG}path")]
    texts = [(e.text, text_box(e), float(e.get("font-size"))) for e in root.iter(f"{SVG}text")]
    faults = []
    spans = [g.bounds for _, g in lines]
    frames = [g for w, g in lines if w == "frame"]
    frame = box(*max(frames, key=lambda g: g.envelope.area).bounds) if frames else box(0, 0, 0, 0)
    boxes = [b.bounds for _, b, _ in texts]
    for i, (text, b, size) in enumerate(texts):
        if size * LEAST_CAP < 2.5 - 1e-9:
            faults.append(["small", text])
        if not frame.contains(b):
            faults.append(["outside", text])
        for (other, c, _), other_box in zip(texts[i + 1 :], boxes[i + 1 :]):
            if near(boxes[i], other_box) and b.intersection(c).area > 1e-6:
                faults.append(["text on text", text, other])
        for (weight, g), span in zip(lines, spans):
            if near(boxes[i], span) and b.intersection(g).length > 1e-6:
                faults.append([f"text on {weight}", text])
    room = frame.buffer(1e-6)
    for weight, g in lines:
        if not room.contains(g):
            faults.append(["outside", weight])
    by = {}
    for weight, g in lines:
        by.setdefault(weight, []).append([round(v, 4) for v in g.bounds])
    return {
        "paper": [width, height],
        "faults": faults,
        "texts": [[t, *[round(v, 4) for v in b.bounds]] for t, b, _ in texts],
        "bounds": by,
    }


print(json.dumps({file: read(file) for file in sys.argv[1:]}))
