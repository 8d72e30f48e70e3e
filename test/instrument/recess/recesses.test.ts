import { beforeAll, describe, expect, it } from "vitest";
import { findings } from "../../../src/checks/checks.ts";
import { recessReach } from "../../../src/checks/recess-reach.ts";
import { recessWall } from "../../../src/checks/recess-wall.ts";
import { flatsOf } from "../../../src/drawing/flat/flats.ts";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { signedArea } from "../../../src/geometry/measure.ts";
import { rectangle } from "../../../src/geometry/rectangle.ts";
import { clash } from "../../../src/geometry/solid/clash.ts";
import { mesh } from "../../../src/geometry/solid/mesh.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import { contradictions } from "../../../src/instrument/contradictions.ts";
import { coreAxes } from "../../../src/instrument/core/from-core.ts";
import { instrument } from "../../../src/instrument/instrument.ts";
import { axesOf } from "../../../src/instrument/recess/axes.ts";
import { floorOf } from "../../../src/instrument/recess/heights.ts";
import { laid } from "../../../src/instrument/recess/outlines.ts";
import { madeRecesses } from "../../../src/instrument/recess/recesses.ts";
import { dimensionOf, type Spec } from "../../../src/order/spec.ts";
import { dimensionsOf } from "../../../src/report/dimensions.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { modelOf } from "../../../src/workshop/model.ts";
import { forced } from "../../forced.ts";
import { everyCount, orderText, resolved, sampleText, specOf } from "../../samples.ts";

const store = memoryStore();
const made = (spec: Spec) => instrument(spec, store);
const problemsOf = (spec: Spec) => contradictions(spec, made(spec));
const sedge = sampleText("designs", "sedge.yaml");

/** Sedge with something of its text changed. */
function changed(from: string, to: string, text = sedge) {
  expect(text).toContain(from);
  return resolved(orderText("sedge", 4), {}, { designs: { sedge: text.replace(from, to) } });
}

function specWith(from: string, to: string): Spec {
  const spec = changed(from, to);
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
  return spec.value;
}

/** The line of the design on which some words stand. */
const lineOf = (words: string, text = sedge) => text.slice(0, text.indexOf(words)).split("\n").length;

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

describe("on the meshes", () => {
  let kernel: Kernel;
  beforeAll(async () => {
    kernel = await loadKernel();
  });

  const meshes = new Map<Solid, Solid>();
  /** A part's mesh, made once for all that is put into it. */
  function meshOf(recipe: Solid): Solid {
    const known = meshes.get(recipe);
    if (known !== undefined) return known;
    const outcome = mesh(kernel, recipe, 0.005);
    if (outcome.kind !== "ok") throw new Error(outcome.kind);
    const solid: Solid = { kind: "mesh", mesh: outcome.mesh };
    meshes.set(recipe, solid);
    return solid;
  }

  it.each([
    ["sedge", 5],
    ["thrift", 4],
  ] as const)(
    "of %s with %i strings each item lies in its recess with the clearance, and one 0.02 larger doesn't",
    (design, count) => {
      const spec = specOf(design, count);
      const own = made(spec);
      const clearance = dimensionOf(spec, "recess.clearance");
      for (const recess of madeRecesses(own)) {
        const { item, part, id } = recess;
        const thick =
          { neck: "core.depth", body: "body.thickness" }[part as "neck"] ??
          `${part.replace("-", ".")}.thickness`;
        const from = spec.recesses.find((one) => one.id === id)!;
        const turn = (part === "wing-bass" ? -1 : 1) * from.turn;
        const floor = floorOf(recess, dimensionOf(spec, thick));
        /** The item's own body, grown a side, standing so high over the floor. */
        const body = (grown: number, over: number): Solid => {
          const shape = item!.body;
          const plain =
            shape.shape === "box"
              ? rectangle(
                  -shape.length / 2 - grown,
                  -shape.width / 2 - grown,
                  shape.length / 2 + grown,
                  shape.width / 2 + grown,
                )
              : {
                  closed: true,
                  points: [1, -1].map((s) => ({ x: s * (shape.diameter / 2 + grown), y: 0, bulge: 1 })),
                };
          const outer = laid(plain, turn, recess.at);
          const height = item!.depth;
          const raised: Solid = {
            kind: "extrude",
            outlines: [{ outer, holes: [] }],
            base: floor - over - height,
            height,
          };
          return {
            kind: "place",
            solid: { kind: "place", solid: raised, frame: axesOf(part, spec, own) },
            frame: coreAxes(own.core),
          };
        };
        const recipe =
          part === "neck"
            ? own.neckSolid
            : part === "body"
              ? own.body!.solid
              : own.wings![part === "wing-bass" ? "bass" : "treble"].solid;
        const solid = meshOf(recipe);
        const fits = clash(kernel, body(0, clearance), solid, 0.005);
        if (fits.kind !== "ok") throw new Error(fits.kind);
        expect(fits.interference, id).toBe(0);
        expect(Math.abs(fits.gap - clearance), id).toBeLessThan(0.006);
        const large = clash(kernel, body(clearance + 0.02, clearance), solid, 0.005);
        if (large.kind !== "ok") throw new Error(large.kind);
        expect(large.interference, id).toBeGreaterThan(0.5);
        // Its cover's underside is just over it.
        const cover = own.covers.find((one) => one.recess.id === id)!.solid();
        const under = clash(kernel, body(0, 0), cover, 0.005);
        if (under.kind !== "ok") throw new Error(under.kind);
        expect(under.interference, id).toBe(0);
        if (item!.shaft === null) expect(under.gap, id).toBeCloseTo(clearance, 3);
        const closed = clash(kernel, cover, solid, 0.005);
        if (closed.kind !== "ok") throw new Error(closed.kind);
        expect(closed.interference, id).toBeLessThan(0.01);
        expect(closed.contact, id).toBeGreaterThan(100);
      }
    },
  );
});

type Case = [what: string, from: string, to: string, name: string, found: RegExp, hint: RegExp];

describe("recesses that can't be", () => {
  const battery = "holds: battery-9v, cover: yes }";
  const jack = "at: [0.7419, 0.5516]";
  it.each<Case>([
    [
      "in a part that the design hasn't",
      "{ id: battery, in: neck",
      "{ id: battery, in: body",
      "recess.battery",
      /a recess in "body"/,
      /part that this design has/,
    ],
    [
      "for an item that isn't known",
      "holds: battery-9v",
      "holds: battery-9w",
      "recesses.list.0.holds",
      /battery-9w/,
      /did you mean battery-9v/,
    ],
    [
      "for a jack without a way out",
      "turn: 34 deg, out: 124 deg",
      "turn: 34 deg",
      "recess.jack",
      /no way out for jack-6.35/,
      /add out/,
    ],
    [
      "for a battery with a way out",
      battery,
      `out: 0 deg, ${battery}`,
      "recess.battery",
      /a way out of a recess for battery-9v/,
      /remove out/,
    ],
    ["of one name", "{ id: preamp,", "{ id: battery,", "battery", /"battery"/, /another name/],
    [
      "with a bore from a recess that isn't there",
      "from: battery, to: preamp",
      "from: batery, to: preamp",
      "bore.battery-wire",
      /batery/,
      /did you mean battery/,
    ],
    [
      "with a bore to where it began",
      "from: battery, to: preamp",
      "from: preamp, to: preamp",
      "bore.battery-wire",
      /preamp/,
      /another recess/,
    ],
    [
      "with a bore of nothing",
      "to: jack, size: 4 mm",
      "to: jack, size: 0 mm",
      "bore.jack-wire",
      /0 mm/,
      /diameter/,
    ],
  ])("%s are told where they are written", (_, from, to, name, found, hint) => {
    const spec = changed(from, to);
    expect(spec.ok).toBe(false);
    const problem = (spec.ok ? [] : spec.problems).find((one) => one.name === name)!;
    expect(problem.found).toMatch(found);
    expect(problem.hint).toMatch(hint);
    expect(problem.position.file).toBe("sedge.yaml");
    expect(problem.position.line).toBe(lineOf(from));
  });

  const pin = "recess battery and pin";
  it.each<Case>([
    [
      "out of the rim",
      jack,
      "at: [0.7419, 0.75]",
      "recess.jack",
      /no wood between recess jack and the wing's rim/,
      /move recess jack inward by/,
    ],
    [
      "into the joint",
      jack,
      "at: [0.7419, 0.2]",
      "recess.jack",
      /recess jack and the joint/,
      /move recess jack out by/,
    ],
    [
      "into a pin",
      "plus: -198 mm }, 0 mm], holds: battery-9v",
      "plus: -230 mm }, 0 mm], holds: battery-9v",
      "recess.battery",
      new RegExp(pin),
      /away from pin/,
    ],
    [
      "into each other",
      "plus: -198 mm }, 0 mm], holds: battery-9v",
      "plus: -170 mm }, 0 mm], holds: battery-9v",
      "recess.preamp",
      /preamp and recess battery: they overlap/,
      /further apart/,
    ],
    [
      "out of the core's side",
      "plus: -198 mm }, 0 mm], holds: battery-9v",
      "plus: -198 mm }, 9 mm], holds: battery-9v",
      "recess.battery",
      /recess battery and the core's sides/,
      /inward by|turn it/,
    ],
    [
      "with a bore that misses its recess",
      "to: jack, size: 4 mm, height: 3.5 mm",
      "to: jack, size: 4 mm, height: 30 mm",
      "bore.jack-wire",
      /bore jack-wire coming .* over the floor of recess jack/,
      /lower the height of bore jack-wire/,
    ],
    [
      "with a bore beside its recess",
      "plus: -140 mm }, 0 mm], holds: preamplifier",
      "plus: -120 mm }, 0 mm], holds: preamplifier",
      "bore.pickup-wire",
      /beside recess preamp/,
      /move recess preamp under the bridge/,
    ],
    [
      "with a bore through a pin",
      "height: 6.5 mm, begins: 2.2 mm",
      "height: 2.6 mm, begins: 2.6 mm",
      "bore.volume-wire",
      /bore volume-wire and pin a of the treble wing/,
      /height/,
    ],
    [
      "with a way out into the joint",
      "turn: 34 deg, out: 124 deg",
      "turn: 34 deg, out: -90 deg",
      "recess.jack",
      /way out leading into the joint/,
      /turn out of recess jack/,
    ],
    [
      "under the bridge with screws' holes wider than their ledge",
      "cover.screw: { value: 2.5 mm, least: 2.2 mm, most: 2.8 mm",
      "cover.screw: { value: 4.5 mm, least: 2.2 mm, most: 4.8 mm",
      "cover.ledge",
      /a ledge of 5 mm/,
      /raise cover.ledge to 5.5 mm/,
    ],
  ])("%s are told at their place in the design", (_, from, to, name, found, hint) => {
    const problems = problemsOf(specWith(from, to));
    const problem = problems.find((one) => found.test(one.found));
    expect(problems.map((one) => one.found).join("\n")).toMatch(found);
    expect(problem!.hint).toMatch(hint);
    expect(problem!.position.file).toBe("sedge.yaml");
    const [kind, id] = name.split(".");
    if (kind !== "cover")
      expect(problem!.position.line).toBe(lineOf(`{ id: ${id},`, sedge.replace(from, to)));
  });

  it.each([
    ["cover.thickness", 11, /recess battery and the face opposite/, /raise core.depth to 30\.65 mm/],
    ["wing.bass.thickness", 15, /recess jack and the face opposite/, /raise wing.bass.thickness to/],
    ["recess.corner", 12, /recess .* too small for two corners of 12 mm/, /lower recess.corner to less than/],
    ["cover.lip", 0.5, /a lip of 0.5 mm/, /raise cover.lip to 0.94 mm/],
  ] as const)(
    "by an order's %s of %d are told at that, with the number to move",
    (id, value, found, hint) => {
      const problems = problemsOf(forced(specOf("sedge", 4), { [id]: value })).filter((one) =>
        found.test(one.found),
      );
      expect(problems.length).toBeGreaterThan(0);
      for (const problem of problems) {
        expect(problem).toMatchObject({ name: id, position: { file: "order.yaml" } });
        expect(problem.hint).toMatch(hint);
      }
    },
  );
});

describe("the checks of recesses", () => {
  const found = (spec: Spec, id: string) =>
    findings(modelOf(spec, store), [recessWall, recessReach]).find((one) => one.id === id)!;

  it("recess.wall refuses where a wall is thinner than the design's, says which and holds its files back", () => {
    const spec = specOf("sedge", 4);
    const { found: least } = found(spec, "recess.wall");
    const thin = found(forced(spec, { "recess.wall": least + 0.1 }), "recess.wall");
    expect(thin).toMatchObject({
      status: "refuse",
      stake: "spoilage",
      found: least,
      why: expect.stringMatching(/breaks out: (move|raise|change)/),
    });
    expect(thin.holds).toEqual(
      expect.arrayContaining(["neck-back", "wing-bass-back", "wing-treble-back", "cover-battery"]),
    );
    expect(found(forced(spec, { "recess.wall": least }), "recess.wall").status).toBe("pass");
  });

  it("recess.wall finds the wood under a battery in a core of its depth, and that told to raise is enough", () => {
    const spec = forced(specOf("sedge", 4), { "core.depth": 21.2, "recess.wall": 1.9 });
    const walls = made(spec).recessWalls.filter(
      ({ between }) => between === "recess battery and the face opposite",
    );
    expect(walls[0]!.left).toBeCloseTo(21.2 - 17.5 - 0.15 - 2, 9);
    const to = Number(/raise core.depth to ([\d.]+) mm/.exec(walls[0]!.mend)![1]);
    expect(to - 17.5 - 0.15 - 2).toBeGreaterThanOrEqual(1.9 - 1e-9);
  });

  it("recess.reach refuses a jack whose wall is thicker than it reaches through, and tells by how much", () => {
    const near = specOf("sedge", 4);
    expect(found(near, "recess.reach")).toMatchObject({ status: "pass", limit: 12 });
    const deep = specWith("at: [0.7419, 0.5516]", "at: [0.78, 0.5]");
    const refused = found(deep, "recess.reach");
    expect(refused).toMatchObject({
      status: "refuse",
      subject: "wing-bass",
      holds: ["wing-bass", "wing-bass-back"],
    });
    expect(refused.why).toContain(`by ${(Math.ceil((refused.found - 12) * 100) / 100).toString()} mm`);
  });

  it("say nothing of an instrument without recesses", () => {
    const spec = specOf("sedge", 4);
    const bare = { ...spec, recesses: [], bores: [] };
    expect(findings(modelOf(bare, store), [recessWall, recessReach])).toEqual([]);
    expect(dimensionsOf(bare).some(({ id }) => id.startsWith("bore."))).toBe(false);
  });
});
