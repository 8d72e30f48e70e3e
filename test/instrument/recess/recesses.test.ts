import { describe, expect, it } from "vitest";
import { findings } from "../../../src/checks/checks.ts";
import { recessReach } from "../../../src/checks/recess-reach.ts";
import { recessWall } from "../../../src/checks/recess-wall.ts";
import { flatsOf } from "../../../src/drawing/flat/flats.ts";
import { signedArea } from "../../../src/geometry/measure.ts";
import { contradictions } from "../../../src/instrument/contradictions.ts";
import { instrument } from "../../../src/instrument/instrument.ts";
import { madeRecesses } from "../../../src/instrument/recess/recesses.ts";
import { dimensionOf, type Spec } from "../../../src/order/spec.ts";
import { dimensionsOf } from "../../../src/report/dimensions.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { modelOf } from "../../../src/workshop/model.ts";
import { everyCount, specOf } from "../../samples.ts";
import { specWith } from "./changed-design.ts";

const store = memoryStore();
const made = (spec: Spec) => instrument(spec, store);
const problemsOf = (spec: Spec) => contradictions(spec, made(spec));

describe.each(everyCount)("the recesses of $design with $count strings", ({ design, count }) => {
  const spec = specOf(design, count);
  const of = (id: string) => dimensionOf(spec, id);

  it("hold battery, preamplifier, control and jack, and wires lead from the bridge to the jack", () => {
    const kinds = made(spec).recesses.map((recess) =>
      recess.kind === "ok" ? recess.item?.kind : recess.kind,
    );
    expect(kinds.toSorted()).toEqual(["battery", "control", "jack", "preamplifier"]);
    const reached = new Set(["bridge"]);
    for (const _ of spec.bores)
      for (const { from, to } of spec.bores) {
        if (reached.has(from)) reached.add(to);
        if (reached.has(to)) reached.add(from);
      }
    for (const { id } of spec.recesses) expect([...reached]).toContain(id);
  });

  it("can be made, with the wood that the design asks for, and every wall and depth is told", () => {
    expect(problemsOf(spec)).toEqual([]);
    const model = modelOf(spec, store);
    for (const { status } of findings(model, [recessWall, recessReach])) expect(status).toBe("pass");
    const told = dimensionsOf(spec).filter(({ id }) => /^(recess\.[a-z]+\.(depth|wall)|bore)/.test(id));
    // A settable one of that form has no recess.
    expect(told.length).toBeGreaterThanOrEqual(2 * 4 + 2 * spec.bores.length);
    for (const { id, of: value } of told)
      if (id.endsWith(".wall")) expect(value(model), id).toBeGreaterThanOrEqual(of("recess.wall") - 1e-6);
  });

  it("are as deep as what they hold, its room and its cover, or as its shaft needs", () => {
    for (const { depth, item, part } of madeRecesses(made(spec))) {
      const thick =
        { neck: "core.depth", body: "body.thickness" }[part as "neck"] ??
        `${part.replace("-", ".")}.thickness`;
      const plain = item!.depth + of("recess.clearance") + of("cover.thickness");
      const shaft = item!.shaft === null ? 0 : of(thick) - item!.shaft.reach;
      expect(depth).toBeCloseTo(Math.max(plain, shaft), 9);
    }
  });
});

describe("a recess for a box", () => {
  it("is larger than it by the clearance a side, and by a piece at each corner that frees it", () => {
    const [r, c] = [3.2, 0.15];
    const { path } = madeRecesses(made(specOf("sedge", 4))).find(({ id }) => id === "battery")!;
    const area = (48.5 + 2 * c) * (26.5 + 2 * c) + 4 * r ** 2 * (Math.PI / 2 - 1);
    expect(signedArea(path)).toBeCloseTo(area, 6);
    const arcs = path.points.filter(({ bulge }) => bulge !== 0);
    expect(arcs.map(({ bulge }) => bulge)).toEqual([1, 1, 1, 1]);
  });

  it("in a bass wing is the mirror image of one in a treble wing, turn and way out too", () => {
    const bass = madeRecesses(made(specOf("sedge", 4))).find(({ id }) => id === "jack")!;
    const treble = madeRecesses(
      made(
        specWith(
          "{ id: jack, in: wing-bass, from: back, at: [0.7419, 0.5516]",
          "{ id: jack, in: wing-treble, from: back, at: [192.894 mm, 35.3024 mm]",
        ),
      ),
    ).find(({ id }) => id === "jack")!;
    expect(bass.at.x).toBeCloseTo(treble.at.x, 6);
    expect(bass.at.y).toBeCloseTo(-treble.at.y, 6);
    expect(bass.thread!.way).toBe(-treble.thread!.way);
    expect(signedArea(bass.path)).toBeCloseTo(signedArea(treble.path), 9);
  });
});

describe("a recess of an outline of its own, from the front", () => {
  const outline = (corner: string) => {
    const edges = [
      ["a", "0.8, 0.2"],
      ["b", "0.8, 0.8"],
      ["c", "0.2, 0.8"],
      ["d", "0.2, 0.2"],
    ].map(([id, to]) => `{ id: ${id}, to: [${to}], corner: ${corner} }`);
    const face = `{ frame: { along: core.width, out: core.width }, edges: [${edges.join(", ")}], holes: [{ id: s, at: [0.14, 0.5], size: 2.5 mm }] }`;
    const from = "{ id: volume, in: wing-treble, from: back, at: [0.5714, 0.6], holds: volume-control,";
    const to = `{ id: volume, in: wing-treble, from: front, at: [0.5714, 0.55], holds: { face: ${face}, depth: 8 mm },`;
    // A rest's mount, too, is sunk into the wing's back.
    const spec = specWith(from, to);
    return { ...spec, bores: [], rests: { ...spec.rests, mounts: [] } };
  };

  it("has the outline's own area, a ledge round it, a screw where the face says, and stands on the wing's own drawing", () => {
    const spec = outline("4 mm");
    const [side, round] = [0.6 * 46, (4 - Math.PI) * 16];
    const recess = madeRecesses(made(spec)).find(({ id }) => id === "volume")!;
    expect(signedArea(recess.path)).toBeCloseTo(side ** 2 - round, 6);
    expect(signedArea(recess.cover!.ledge)).toBeCloseTo((side + 10) ** 2 - (4 - Math.PI) * 81, 3);
    expect(recess.depth).toBe(10);
    expect(recess.cover!.screws[0]!.x).toBeCloseTo(recess.at.x - 0.36 * 46, 6);
    const own = modelOf(spec, store);
    const shapes = (name: string) =>
      flatsOf(spec)
        .find((file) => file.name === name)
        ?.of(own, store).value.shapes;
    expect(shapes("wing-treble")!.map(({ layer }) => layer)).toEqual(
      expect.arrayContaining(["RECESS-2_00", "RECESS-10_00", "BORE-1_60"]),
    );
    expect(shapes("wing-treble-back")).toBeUndefined();
    expect(
      shapes("wing-bass")!
        .map(({ layer }) => layer)
        .join(),
    ).not.toContain("RECESS");
  });

  it("is told where an inside corner is tighter than its cutter, or has no room", () => {
    const [tight] = problemsOf(outline("2 mm"));
    expect(tight!.found).toBe("an inside corner of 2 mm in recess volume");
    expect(tight!.hint).toContain("round the corner");
    const [none] = problemsOf(outline("30 mm"));
    expect(none!.found).toMatch(/recess volume's edge . has no room for its corner/);
    expect(none!.position.file).toBe("sedge.yaml");
  });
});
