"""Reads full-size PDFs by qpdf's JSON and an interpreter of its own, joins their sheets at the match marks and holds them against a model.

Usage: read_pdf.py JOB.json, a list of { pdf, width, margin, scale: [x, y] across and along the paper, paths: [[[x, y], ...], ...], between: [words, words] | null }.
Prints, for each, faults and what was measured. Millimetres as they come out of a printer of that scale.
"""
import base64, json, math, re, subprocess, sys, warnings
from shapely.geometry import LineString, MultiPoint, Point, box
from shapely.ops import unary_union
from shapely.strtree import STRtree

# The tree of shapely 1.8 warns of what 2.0 does otherwise; both are met below.
warnings.filterwarnings("ignore")
POINT = 25.4 / 72
TOKEN = re.compile(rb"\((?:\\.|[^\\()])*\)|\[[^\]]*\]|/[^\s/\[\]()<>]+|[^\s/\[\]()<>]+")


def times(a, b):
    return (a[0] * b[0] + a[1] * b[2], a[0] * b[1] + a[1] * b[3], a[2] * b[0] + a[3] * b[2],
            a[2] * b[1] + a[3] * b[3], a[4] * b[0] + a[5] * b[2] + b[4], a[4] * b[1] + a[5] * b[3] + b[5])


def put(m, x, y):
    return (m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5])


def pages_of(path):
    data = json.loads(subprocess.run(["qpdf", "--json=2", "--json-stream-data=inline", path], capture_output=True, check=True).stdout)
    objects = data["qpdf"][1]
    for page in data["pages"]:
        about = objects["obj:" + page["object"]]["value"]
        content = b"".join(base64.b64decode(objects["obj:" + ref]["stream"]["data"]) for ref in page["contents"])
        yield about["/MediaBox"], content


def read(content):
    """Groups by name: lines (points, width) in points of the page, with the box they are clipped to, and texts with their places."""
    m, stack, group, groups = (1, 0, 0, 1, 0, 0), [], None, []
    clip, width, subs, start, pending, args, text = None, 1, [], None, None, [], None
    for token in TOKEN.findall(content):
        word = token.decode("latin1")
        if word[0] in "([/" or re.fullmatch(r"[-+.\d]+", word):
            args.append(word)
            continue
        n = [float(a) for a in args if re.fullmatch(r"[-+.\d]+", a)]
        if word == "cm": m = times(n, m)
        elif word == "q": stack.append((m, clip, width))
        elif word == "Q": m, clip, width = stack.pop()
        elif word == "BMC":
            group = {"name": args[0][1:], "lines": [], "texts": []}
            groups.append(group)
        elif word == "EMC": group = None
        elif word == "w": width = n[0] * math.hypot(m[0], m[1])
        elif word == "m": subs.append([put(m, *n)])
        elif word == "l": subs[-1].append(put(m, *n))
        elif word == "h": subs[-1].append(subs[-1][0])
        elif word == "c":
            a, (b, c, d) = subs[-1][-1], [put(m, n[i], n[i + 1]) for i in (0, 2, 4)]
            count = 32 if math.dist(a, d) < 150 else 160
            for i in range(1, count + 1):
                t = i / count
                k = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3)
                subs[-1].append(tuple(sum(k[j] * (a, b, c, d)[j][axis] for j in range(4)) for axis in (0, 1)))
        elif word == "re":
            x, y, w, h = n
            subs.append([put(m, *p) for p in ((x, y), (x + w, y), (x + w, y + h), (x, y + h), (x, y))])
        elif word == "W": pending = subs[-1]
        elif word in ("S", "B", "n"):
            if word == "n" and pending:
                xs, ys = zip(*pending)
                clip = (min(xs), min(ys), max(xs), max(ys))
            elif group is not None:
                group["lines"] += [(sub, width, clip) for sub in subs]
            subs, pending = [], None
        elif word == "Tf": size = n[0]
        elif word == "Tm": place = times(n, m)
        elif word == "Tj":
            said = re.sub(r"\\(.)", r"\1", args[0][1:-1])
            x, y = put(place, 0, 0)
            ux, uy = put(place, 0.6 * size * len(said), 0)
            vx, vy = put(place, 0, 0.76 * size)
            wx, wy = put(place, 0, -0.15 * size)
            group["texts"].append((said, (x, y), [(ux, uy), (vx, vy), (wx, wy), (ux + vx - x, uy + vy - y)], size, clip))
        elif word not in ("G", "g", "J", "j", "d", "BT", "ET", "cm"):
            raise ValueError(f"unknown {word}")
        args = []
    return groups


def measured(pdf, width, margin, scale, paths, between):
    faults, out = [], {"square": 0, "inside": 1e9, "matches": 0, "joined": 0, "smallest": 1e9, "pages": 0, "words": []}
    sheets = []
    for media, content in pages_of(pdf):
        out["pages"] += 1
        x0, y0, x1, y1 = media
        upright = abs((x1 - x0) * POINT - width) < 0.01
        kx, ky = (scale if upright else scale[::-1])
        kx, ky = kx * POINT, ky * POINT
        groups = read(content)
        edge = (x0 + margin / POINT, y0 + margin / POINT, x1 - margin / POINT, y1 - margin / POINT)
        sheet = {"match": {}, "lines": [], "texts": []}
        square = []
        for group in groups:
            name = group["name"]
            for points, pen, clip in group["lines"]:
                line = LineString(points)
                seen = line if clip is None else line.intersection(box(*clip))
                if seen.is_empty: continue
                b = seen.bounds
                out["inside"] = min(out["inside"], *(((b[i] - edge[i]) * (1, 1, -1, -1)[i] - pen / 2) * POINT for i in range(4)))
                mm = [(x * kx, y * ky) for x, y in points]
                if name == "square":
                    # Its four sides, or the four corners alone where it has no room for them: each an arm, the corner, an arm.
                    square += list(zip(points[:4], mm[:4])) if len(points) > 3 else [(points[1], mm[1])]
                if name.startswith("layer."):
                    own = LineString(mm)
                    cut = own if clip is None else own.intersection(box(clip[0] * kx, clip[1] * ky, clip[2] * kx, clip[3] * ky))
                    sheet["lines"].append((name, cut))
            for said, at, corners, size, clip in group["texts"]:
                mm = [(x * kx, y * ky) for x, y in [at, *corners]]
                out["smallest"] = min(out["smallest"], size * 0.64)
                seen = MultiPoint([at, *corners]).envelope
                b = (seen if clip is None else seen.intersection(box(*clip))).bounds
                out["inside"] = min(out["inside"], *((b[i] - edge[i]) * (1, 1, -1, -1)[i] * POINT for i in range(4)))
                if name == "notes":
                    xs, ys = zip(*mm)
                    sheet["texts"].append((said, (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2))
            if name.startswith("match."):
                xs, ys = zip(*((x * kx, y * ky) for points, _, _ in group["lines"] for x, y in points))
                sheet["match"][name] = ((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2)
            if name.startswith("bar-"):
                points = [(x * kx, y * ky) for x, y in group["lines"][0][0]]
                if abs(math.dist(*points) - float(name.split(".")[1])) > 0.02: faults.append(f"{name} measures {math.dist(*points):.3f}")
        if square:
            mm = [place for _, place in square]
            if len(mm) != 4: faults.append(f"a square of {len(mm)} corners")
            sides = [math.dist(mm[i], mm[(i + 1) % 4]) for i in range(4)] + [math.dist(mm[0], mm[2]) / math.sqrt(2)]
            out["square"] = max(out["square"], *(abs(side - 100) for side in sides))
            out["corner"] = [[x * POINT, (y1 - y) * POINT] for (x, y), _ in square]
        names = [group["name"].split(".")[0] for group in groups]
        for group in groups:
            out["words"] += [said for said, *_ in group["texts"]]
        if names == ["remarks"]:
            continue
        for wanted in ("square", "bar-x", "bar-y", "map", "foot"):
            if names.count(wanted) != 1: faults.append(f"{names.count(wanted)} of {wanted}")
        sheets.append(sheet)
    if out["square"] > 0.02: faults.append("square")
    if out["inside"] < 0: faults.append("outside the printable area")
    # Sheets are laid out from the first, each by the marks that it shares with one that lies already.
    laid, todo = {0: (0, 0)}, [0]
    while todo:
        i = todo.pop()
        for j, other in enumerate(sheets):
            shared = sorted(set(sheets[i]["match"]) & set(other["match"]))
            if i == j or not shared: continue
            moves = [(laid[i][0] + sheets[i]["match"][k][0] - other["match"][k][0], laid[i][1] + sheets[i]["match"][k][1] - other["match"][k][1]) for k in shared]
            if len(shared) != 3: faults.append(f"sheets {i} and {j} share {len(shared)} marks")
            at = laid.get(j, moves[0])
            worst = max(math.dist(at, move) for move in moves)
            out["joined"] = max(out["joined"], worst)
            out["matches"] += len(shared)
            if worst > 0.02: faults.append(f"sheets {i} and {j} don't match by {worst:.3f}")
            if j not in laid:
                laid[j] = at
                todo.append(j)
    if len(laid) != len(sheets): faults.append("sheets that can't be joined")
    lines, texts = [], []
    for i, sheet in enumerate(sheets):
        dx, dy = laid.get(i, (0, 0))
        for name, line in sheet["lines"]:
            for piece in getattr(line, "geoms", [line]):
                if piece.geom_type == "LineString": lines.append((name, LineString([(x + dx, y + dy) for x, y in piece.coords])))
        texts += [(said, x + dx, y + dy) for said, x, y in sheet["texts"]]
    drawn = unary_union([line for _, line in lines])
    model = MultiPoint([point for path in paths for point in path])
    dx, dy = drawn.bounds[0] - model.bounds[0], drawn.bounds[1] - model.bounds[1]
    every = [line for _, line in lines]
    tree = STRtree(every)
    far = 0
    for path in paths:
        for x, y in path:
            spot = Point(x + dx, y + dy)
            near = tree.nearest(spot)
            far = max(far, spot.distance(near if hasattr(near, "distance") else every[near]))
    out["covered"] = far
    if far > 0.02: faults.append(f"the model is {far:.3f} from what is drawn")
    size = [abs((drawn.bounds[i + 2] - drawn.bounds[i]) - (model.bounds[i + 2] - model.bounds[i])) for i in (0, 1)]
    out["size"] = max(size)
    if max(size) > 0.02: faults.append(f"what is drawn is off by {max(size):.3f} in size")
    if between:
        places = []
        for words in between:
            near = [line.bounds for said, x, y in texts if said == words for name, line in lines
                    if line.bounds[2] - line.bounds[0] < 1e-6 and abs(line.bounds[0] - x) < 6]
            near.sort(key=lambda b: abs(b[0] - next(x for said, x, y in texts if said == words)))
            places.append(near[0][0] if near else math.nan)
        out["between"] = abs(places[1] - places[0])
    return {"faults": sorted(set(faults)), **out}


print(json.dumps([measured(job["pdf"], job["width"], job["margin"], job["scale"], job["paths"], job.get("between")) for job in json.load(open(sys.argv[1]))]))
