"""What a plot's SVG shows, measured on the drawing by another program than drew it: scales from the ticks and their numbers, then
bars, marks and lines in those scales. A number that stands beside a bar or line is given as it is written, for comparing."""
import json
import math
import re
import sys
import xml.etree.ElementTree as tree

SVG = "{http://www.w3.org/2000/svg}"
NAME = r"[A-G][#b]?\d"


def path(d):
    """The corners of a path, y upward; the middle of an arc is not among them."""
    words = re.findall(r"[MLAZ]|-?\d+(?:\.\d+)?(?:e-?\d+)?", d)
    out, i = [], 0
    while i < len(words):
        op = words[i]
        if op == "Z":
            i += 1
            continue
        i += 6 if op == "A" else 1
        out.append((float(words[i]), -float(words[i + 1])))
        i += 2
    return out


class Drawing:
    def __init__(self, file):
        root = tree.parse(file).getroot()
        self.lines = [(e.get("data-weight"), path(e.get("d"))) for e in root.iter(f"{SVG}path")]
        self.texts = []
        for e in root.iter(f"{SVG}text"):
            x, y, size, long = float(e.get("x")), -float(e.get("y")), float(e.get("font-size")), float(e.get("textLength"))
            left = x - {"start": 0, "middle": long / 2, "end": long}[e.get("text-anchor")]
            turned = e.get("transform") is not None
            self.texts.append({"text": e.text, "x": left + long / 2, "left": left, "right": left + long, "y": y, "size": size, "turned": turned})

    def of(self, weight):
        return [p for w, p in self.lines if w == weight]

    def level(self):
        return [t for t in self.texts if not t["turned"]]


def straight(pairs):
    """A scale through places and their values; every one of them must lie on it."""
    pairs = sorted(pairs)
    assert len(pairs) >= 2, "no scale from fewer than two ticks"
    (p0, v0), (p1, v1) = pairs[0], pairs[-1]
    for p, v in pairs:
        assert abs(v0 + (v1 - v0) * (p - p0) / (p1 - p0) - v) < 1e-4 * abs(v1 - v0), f"a tick off its scale: {v}"
    return lambda p: v0 + (v1 - v0) * (p - p0) / (p1 - p0)


def number(text):
    return float(text) if re.fullmatch(r"-?\d+(\.\d+)?", text) else None


def upright(drawing):
    """Upright axes: where, from where to where, and their scales."""
    axes = drawing.of("axis")
    found = []
    for (x1, y1), (x2, y2) in axes:
        if x1 != x2 or abs(y2 - y1) < 5:
            continue
        pairs = []
        for (a, b), (c, d) in axes:
            if b == d and c == x1 and 0.5 < c - a < 3 and min(y1, y2) - 1e-6 <= b <= max(y1, y2) + 1e-6:
                beside = [t for t in drawing.level() if 0 < a - t["right"] < 3 and abs(t["y"] + 1.2 - b) < 1.5]
                values = [number(t["text"]) for t in beside]
                assert len(values) == 1 and values[0] is not None, f"a tick with {values} beside it"
                pairs.append((b, values[0]))
        found.append({"x": x1, "low": min(y1, y2), "high": max(y1, y2), "scale": straight(pairs)})
    return found


def along(drawing, x, y):
    """The scale of the level axis that starts at a place."""
    axes = drawing.of("axis")
    (end,) = [c for (a, b), (c, d) in axes if b == d and a == x and abs(b - y) < 1e-6 and c - a > 20]
    pairs = []
    for (a, b), (c, d) in axes:
        if a == c and abs(max(b, d) - y) < 1e-6 and x - 1e-6 <= a <= end + 1e-6 and abs(b - d) < 3:
            (under,) = [t for t in drawing.level() if abs(t["x"] - a) < 0.01 and 0 < y - t["y"] < 7]
            pairs.append((a, number(under["text"])))
    return end, straight(pairs)


def names(drawing):
    return [t for t in drawing.level() if abs(t["size"] - 5) < 0.01 and re.match(NAME, t["text"])]


def bars(drawing):
    (axis,) = upright(drawing)
    out = []
    for p in drawing.of("bar"):
        xs, ys = [q[0] for q in p], [q[1] for q in p]
        x, low, high = (min(xs) + max(xs)) / 2, min(ys), max(ys)
        zero = min((low, high), key=lambda y: abs(axis["scale"](y)))
        end = high if zero == low else low
        own = [t for t in drawing.level() if re.fullmatch(r"-?\d+\.\d N", t["text"]) and abs(t["x"] - x) < 0.1]
        name = min(names(drawing), key=lambda t: abs(t["x"] - x))
        filled = sum(1 for h in drawing.of("hatch") if min(xs) - 1e-6 <= h[0][0] <= max(xs) + 1e-6 and low - 1e-6 <= h[0][1] <= high + 1e-6)
        out.append({"name": name["text"], "from": axis["scale"](zero), "to": axis["scale"](end), "says": [t["text"] for t in own], "hatched": filled > 0})
    ranges = []
    for (x1, y1), (x2, y2) in drawing.of("range"):
        if x1 == x2:
            name = min(names(drawing), key=lambda t: abs(t["x"] - x1))
            says = [t["text"] for t in drawing.level() if re.search(r" TO .* N$", t["text"]) and abs(t["x"] - name["x"]) < 0.1]
            ranges.append({"name": name["text"], "least": axis["scale"](min(y1, y2)), "most": axis["scale"](max(y1, y2)), "says": says})
    return {"bars": out, "ranges": ranges}


def heights(drawing):
    panels = []
    for axis in upright(drawing):
        end, scale = along(drawing, axis["x"], axis["low"])
        inside = lambda q: axis["x"] - 1e-6 <= q[0] <= end + 1e-6 and axis["low"] - 1e-6 <= q[1] <= axis["high"] + 1e-6
        (curve,) = [p for p in drawing.of("curve") if all(inside(q) for q in p)]
        (surface,) = [p for p in drawing.of("outline") if len(p) > 3 and all(inside(q) for q in p)]
        (name,) = [t for t in names(drawing) if axis["x"] < t["left"] < end and 0 < t["y"] - axis["high"] < 6]
        up, at = axis["scale"], lambda x: curve[0][1] + (curve[-1][1] - curve[0][1]) * (x - curve[0][0]) / (curve[-1][0] - curve[0][0])
        middle = surface[len(surface) // 2]
        says = [t for t in drawing.level() if axis["x"] < t["left"] and t["right"] < end + 0.01 and axis["low"] < t["y"] < axis["high"] + 7 and re.fullmatch(r"-?\d+\.\d\d", t["text"])]
        panels.append({
            "name": name["text"].split()[0], "hollow": float(name["text"].split()[-1]),
            "length": scale(curve[-1][0]), "board": scale(surface[-1][0]),
            "nut": up(curve[0][1]), "bridge": up(curve[-1][1]), "end": up(at(surface[-1][0])),
            "middle": {"x": scale(middle[0]), "string": up(at(middle[0])), "board": up(middle[1])},
            "frets": sorted([scale(p[0][0]), abs(up(p[1][1]) - up(p[0][1]))] for p in drawing.of("edge") if all(inside(q) for q in p)),
            "says": [float(t["text"]) for t in sorted(says, key=lambda t: t["right"])],
        })
    return {"panels": panels}


def bow(drawing):
    middle = lambda values: (min(values) + max(values)) / 2
    rings = [(middle([q[0] for q in p]), middle([q[1] for q in p])) for p in drawing.of("curve")]
    named = []
    for x, y in rings:
        name = min(names(drawing), key=lambda t: math.hypot(t["x"] - x, t["y"] + 2 - y))
        named.append({"name": name["text"], "x": x, "y": y})
    (said,) = [m for m in (re.search(r"([\d.]+):1", t["text"]) for t in drawing.texts) if m]
    lines = []
    for weight in ("edge", "hidden"):
        for (x1, y1), (x2, y2) in drawing.of(weight):
            low, high = ((x1, y1), (x2, y2)) if y1 < y2 else ((x2, y2), (x1, y1))
            if y1 == y2:
                low, high = sorted([(x1, y1), (x2, y2)], reverse=True)
            right = low[0] > high[0]
            ends = [t for t in drawing.level() if abs((t["left"] if right else -t["right"]) - (low[0] if right else -low[0]) - 1.5) < 0.05 and t["text"].endswith("°")]
            text = min(ends, key=lambda t: abs(t["y"] + 1.2 - low[1]))
            touch = [r["name"] for r in named if abs((x2 - x1) * (r["y"] - y1) - (y2 - y1) * (r["x"] - x1)) / math.hypot(x2 - x1, y2 - y1) < 0.02]
            lines.append({"says": text["text"], "degrees": math.degrees(math.atan2(high[1] - low[1], abs(high[0] - low[0]))), "falls": "right" if right else "left", "touches": touch, "dashed": weight == "hidden"})
    ranges = []
    for p in drawing.of("dimension"):
        ring = min(named, key=lambda r: abs(math.hypot(p[0][0] - r["x"], p[0][1] - r["y"]) - 21) + abs(math.hypot(p[-1][0] - r["x"], p[-1][1] - r["y"]) - 21))
        a, b = (math.atan2(q[1] - ring["y"], q[0] - ring["x"]) for q in (p[0], p[-1]))
        says = [t["text"] for t in drawing.level() if re.fullmatch(ring["name"] + r" [\d.]+°", t["text"])]
        ranges.append({"name": ring["name"], "degrees": math.degrees((b - a) % (2 * math.pi)), "says": says})
    return {"scale": float(said.group(1)), "rings": named, "lines": lines, "ranges": ranges}


KINDS = {"tension": bars, "bridge-load": bars, "string-heights": heights, "bow-angles": bow}


def read(file):
    kind = next(kind for kind in KINDS if file.endswith(f"{kind}.svg"))
    drawing = Drawing(file)
    try:
        return {"words": [t["text"] for t in drawing.texts], **KINDS[kind](drawing)}
    except (AssertionError, ValueError) as error:
        return {"words": [t["text"] for t in drawing.texts], "unreadable": str(error)}


print(json.dumps({file: read(file) for file in sys.argv[1:]}))
