import { describe, expect, it } from "vitest";
import { extentsOf } from "../../src/geometry/measure.ts";
import { mirrored } from "../../src/geometry/mirror.ts";
import type { Path } from "../../src/geometry/path.ts";
import { nearestPlace } from "../../src/geometry/path-measures/nearest-place.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { guidedEdge } from "../../src/workshop/guided/guided-edge.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { orderText, resolved, sampleText, specOf } from "../samples.ts";
import { cutAgain, edgeIn, fixtureIn, movedBy, spoilt, told } from "./spoilt-fixture.ts";

const store = memoryStore();
const collared = specOf("mallow", 5, "fixtures:\n  neck-shaper: { cutter: block-100, guide: collar-80 }\n");
const plainNeck = specOf("sedge", 5);
const seven = specOf("thrift", 7, "fixtures:\n  body-bass-router: { cutter: straight-19, guide: pin-12 }\n");
const cello = specOf("bulrush", 5);

/** What stands for each kind of fixture that is held by pins. */
const each: readonly (readonly [file: string, spec: Spec])[] = [
  ["neck-shaper", collared],
  ["body-bass-router", seven],
  ["body-treble-router", specOf("thrift", 4, "", { hand: "left" })],
  ["fingerboard-router", cello],
];

describe.each(each)("saboteurs on %s, each found", (file, spec) => {
  const own = fixtureIn(spec, file);
  const { edge, led, template } = edgeIn(own);
  const { minY, maxY } = extentsOf([template])!;
  const away = Math.sign(minY + maxY);
  /** Something kept, moved toward the nearest place of the edge. */
  const toEdge = (path: Path, by: number) => {
    const box = extentsOf([path])!;
    const at = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
    const nearest = nearestPlace(edge, at);
    if (nearest.kind !== "ok") throw new Error("no edge");
    const [x, y] = [nearest.point.x - at.x, nearest.point.y - at.y];
    return movedBy(path, (x * by) / Math.hypot(x, y), (y * by) / Math.hypot(x, y));
  };

  it("stands as it is", () => {
    for (const name of ["virtual-cut", "clamp.swept", "metal", "hand.near", "run-in.missing", "feed.climb"])
      expect(told(modelOf(spec, store), name, file).status, name).toBe("pass");
  });

  it("a guide 0.2 larger than written, and an edge shifted by 0.02", () => {
    const larger = spoilt(spec, file, (one) => ({
      cut: cutAgain(one, { guide: one.setUp!.guide.diameter + 0.2 }),
    }));
    expect(told(larger, "virtual-cut", file)).toMatchObject({
      status: "refuse",
      found: expect.closeTo(0.1, 2),
    });
    const shifted = spoilt(spec, file, (one) => ({ cut: cutAgain(one, { edge: movedBy(edge, 0, 0.02) }) }));
    expect(told(shifted, "virtual-cut", file).status).toBe("refuse");
  });

  it("each pin and screw moved 5 mm farther toward the path than there is room", () => {
    const metal = own.kept.filter(({ what }) => what === "pin" || what === "screw");
    expect(metal.length).toBeGreaterThan(3);
    for (const { id, margin } of metal) {
      const room = own.cut?.kind === "ok" ? own.cut.kept.find((one) => one.id === id)!.gap - margin : 0;
      const nearer = (by: number) =>
        spoilt(spec, file, (one) => {
          const kept = one.kept.map((it) => (it.id === id ? { ...it, path: toEdge(it.path, by) } : it));
          return { kept, cut: cutAgain(one, { kept }) };
        });
      expect(told(nearer(room + 5), "metal", file), id).toMatchObject({ status: "refuse", stake: "injury" });
    }
  });

  it("a handhold 20 nearer, 200 nearer, and none", () => {
    const nearer = (by: number) =>
      spoilt(spec, file, (one) => {
        const kept = one.kept
          .filter(({ what }) => what !== "handhold" || by < 300)
          .map((it) => (it.what === "handhold" ? { ...it, path: toEdge(it.path, by) } : it));
        return { kept, cut: cutAgain(one, { kept }) };
      });
    const spare = told(modelOf(spec, store), "hand.near", file).found - 305;
    expect(told(nearer(spare + 5), "hand.near", file).status).toBe("attend");
    expect(told(nearer(spare + 200), "hand.near", file)).toMatchObject({ status: "refuse", stake: "injury" });
    expect(told(nearer(300), "hand.near", file)).toMatchObject({ status: "refuse", found: 0 });
  });

  it("a removed run-in, and a run-out 30 shorter", () => {
    const cutShort = (points: typeof edge.points) =>
      spoilt(spec, file, (one) => ({ edge: { ...edgeIn(one), edge: { closed: false, points } } }));
    expect(told(cutShort(edge.points.slice(1)), "run-in.missing", file)).toMatchObject({ status: "refuse" });
    const [last, before] = [edge.points.at(-1)!, edge.points.at(-2)!];
    const long = Math.hypot(last.x - before.x, last.y - before.y);
    const back = { x: (last.x - before.x) / long, y: (last.y - before.y) / long };
    const shorter = { ...last, x: last.x - 30 * back.x, y: last.y - 30 * back.y };
    expect(told(cutShort([...edge.points.slice(0, -1), shorter]), "run-in.missing", file).found).toBeLessThan(
      50,
    );
  });

  it("one climb arrow, and a spindle that turns the other way", () => {
    const climbing = spoilt(spec, file, ({ feed }) => ({
      feed: {
        ...feed!,
        tool: feed!.tool.map((one, i) => (i === 1 ? { ...one, way: { x: -one.way.x, y: -one.way.y } } : one)),
      },
    }));
    expect(told(climbing, "feed.climb", file)).toMatchObject({ status: "refuse", found: 1, stake: "injury" });
    const other = spoilt(spec, file, ({ setUp }) => ({
      setUp: { ...setUp!, machine: { ...setUp!.machine, rotation: "cw" } },
    }));
    expect(told(other, "feed.climb", file).found).toBe(own.feed!.tool.length);
  });

  it("a template that isn't mirrored for the work turned over, and the other hand's arrows", () => {
    const unmirrored = spoilt(spec, file, (one) => ({ cut: cutAgain(one, { edge: mirrored(edge, "y") }) }));
    expect(told(unmirrored, "virtual-cut", file).status).toBe("refuse");
    const flip = ({ x, y }: { x: number; y: number }) => ({ x, y: -y });
    const swapped = spoilt(spec, file, (one) => ({
      edge: { ...edgeIn(one), edge: mirrored(edge, "y") },
      feed: { ...one.feed!, tool: one.feed!.tool.map(({ at, way }) => ({ at: flip(at), way: flip(way) })) },
    }));
    expect(told(swapped, "feed.climb", file).status).toBe("refuse");
  });

  it("an offset of the wrong sign, where there is one", () => {
    const { cutter, guide } = own.setUp!;
    const wrong = guidedEdge.work({
      ...{ run: own.run, cutter: guide.diameter, guide: cutter.diameter, length: 60, waste: own.waste },
      base: { way: { x: 0, y: away }, reach: 400 },
    });
    if (wrong.kind !== "ok") throw new Error(wrong.kind);
    const cut = spoilt(spec, file, (one) => ({ cut: cutAgain(one, { edge: wrong.edge }) }));
    const off = Math.abs(cutter.diameter - guide.diameter);
    const found = told(cut, "virtual-cut", file);
    if (off > 0) expect(found).toMatchObject({ status: "refuse", found: expect.closeTo(off, 1) });
    else expect(found.status).toBe("pass");
    expect(led.points.length).toBeGreaterThan(2);
  });
});

it("a clamp moved 5 mm farther toward the path than there is room is found", () => {
  const file = "fingerboard-router";
  const own = fixtureIn(cello, file);
  const arms = own.kept.filter(({ what }) => what === "clamp");
  expect(arms.length).toBeGreaterThan(2);
  for (const { id } of arms) {
    const { gap, margin } =
      own.cut?.kind === "ok" ? own.cut.kept.find((one) => one.id === id)! : { gap: 0, margin: 0 };
    const nearer = spoilt(cello, file, (one) => {
      const kept = one.kept.map((it) =>
        it.id === id ? { ...it, path: movedBy(it.path, 0, -(gap - margin) - 5) } : it,
      );
      return { kept, cut: cutAgain(one, { kept }) };
    });
    expect(told(nearer, "clamp.swept", file), id).toMatchObject({ status: "refuse", stake: "injury" });
  }
});

describe("the neck's head", () => {
  const file = "neck-shaper";
  const unmarked = (design: string, count: number, more = "") => {
    const text = sampleText("designs", `${design}.yaml`).replace(", finish: hand }", " }");
    expect(text).not.toMatch(/^head:.*finish/m);
    const spec = resolved(orderText(design, count, more), {}, { designs: { [design]: text } });
    if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
    return modelOf(spec.value, store);
  };

  it.each(["sedge", "mallow", "thrift", "bulrush"])(
    "of %s is refused without the design's mark, with the place and which cutter would do",
    (design) => {
      // A cello's head is hollow enough for the smallest block, which is too short for its blank.
      const more = design === "bulrush" ? `fixtures:\n  ${file}: { cutter: block-100-tall }\n` : "";
      const finding = told(unmarked(design, 5, more), "cutter.large", file);
      expect(finding).toMatchObject({ status: "refuse", stake: "spoilage", holds: [file] });
      expect(finding.why).toMatch(/leaves wood at -\d+(\.\d+)?, -?\d+(\.\d+)? over [\d.]+ mm, [\d.]+ deep/);
      expect(finding.why).toMatch(
        /a cutter of [\d.]+ mm or less would do|the largest owned cutter that would do/,
      );
      expect(told(unmarked(design, 5, more), "virtual-cut", file).status).toBe("pass");
      const marked = told(modelOf(specOf(design, 5), store), "cutter.large", file);
      expect(marked).toMatchObject({ status: "pass", why: "1 places are left to the hand" });
    },
  );

  it("marked, leaves no hollow of the heel to the hand: a 100 cutter is refused there, and the largest owned one that would do is named", () => {
    const spec = specOf("sedge", 5, `fixtures:\n  ${file}: { cutter: block-100 }\n`);
    const finding = told(modelOf(spec, store), "cutter.large", file);
    expect(finding.status).toBe("refuse");
    expect(finding.why).toMatch(/leaves wood at 11\d/);
    expect(finding.why).toContain("the largest owned cutter that would do is block-60, 60 mm, on shaper");
    expect(told(modelOf(plainNeck, store), "cutter.large", file).status).toBe("pass");
  });

  it("is refused where the blank is thicker than any block cuts, which says to what", () => {
    const { shop } = cello;
    const cutters = shop.cutters.filter(({ id }) => id !== "block-100-tall");
    const finding = told(modelOf({ ...cello, shop: { ...shop, cutters } }, store), "cutter.short", file);
    expect(finding).toMatchObject({ status: "refuse", stake: "injury", found: 80, limit: 109 });
    expect(finding.why).toContain("saw to 77 mm first and pack the work up");
  });
});
