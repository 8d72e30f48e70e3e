import { describe, expect, it } from "vitest";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { bare, forced, movesIn } from "../forced.ts";
import { foundBy } from "../found-by.ts";
import { everyCount, specOf } from "../samples.ts";

/** One store for all: what a changed number leaves as it was is answered and not worked out again. */
const store = memoryStore();
const problemsOf = (spec: Spec) => contradictions(spec, instrument(spec, store));
const saddle = bare(specOf("mallow", 5));
const cradle = bare(specOf("thrift", 6));

/** A cradle as long and wide as its dimensions say, for specs whose values were forced past the design's measures. */
function cradled(values: Record<string, number>): Spec {
  const spec = forced(cradle, values);
  const [along, out] = ["cradle.length", "bridge.foot.width"].map((id) => spec.values[id]!.value) as [
    number,
    number,
  ];
  if (spec.bridgeFoot.kind !== "cradle") throw new Error("no cradle");
  const { face } = spec.bridgeFoot;
  const edges = face.edges.map((edge) => {
    const to = [edge.to![0] === 0 ? 0 : along, edge.to![1] === 0 ? 0 : out] as const;
    return { ...edge, to };
  });
  return { ...spec, bridgeFoot: { kind: "cradle", face: { ...face, along, out, edges } } };
}

/** A cradle that reaches to where rods, made long, still lie under the core's front. */
const intoRods = {
  ...{ "cradle.length": 280, "core.end": 500, "body.length": 348, "rod.length": 180 },
  ...{ "pin.upper.at": 40, "pin.lower.at": 90 },
};

function screwed(at: readonly [number, number], size = 2.5, values: Record<string, number> = {}): Spec {
  const spec = forced(saddle, values);
  return { ...spec, bridgeFoot: { kind: "saddle", screws: [{ id: "bass", at, size }] } };
}

describe("a bridge that can't stand or can't be fastened", () => {
  it.each<[string, Spec, string, RegExp]>([
    [
      "a foot before the core's front",
      forced(saddle, { "bridge.tilt": 15, "core.start": 363 }),
      "bridge.tilt",
      /begins .* before the core's front/,
    ],
    [
      "a foot under the board",
      forced(saddle, { "fingerboard.length": 363.5, "bridge.foot.thickness": 8, "bridge.tilt": 8 }),
      "bridge.tilt",
      /under a board/,
    ],
    [
      "a foot over the core's end",
      forced(specOf("sedge", 5), { "bridge.tilt": -15, "core.end": 343, afterlength: 20 }),
      "bridge.tilt",
      /before its end/,
    ],
    ["a screw outside the foot", screwed([-2, 2.75]), "bridge.foot.thickness", /outside the foot by 2 mm/],
    [
      "a screw in the opening between the feet",
      screwed([26, 2.75]),
      "bridge.foot.thickness",
      /outside the foot by 1\d/,
    ],
    [
      "a screw past the foot's tail edge",
      screwed([7, -1]),
      "bridge.foot.thickness",
      /outside the foot by 1 mm/,
    ],
    [
      "a screw too near the foot's end",
      screwed([2.4, 2.75]),
      "bridge.foot.thickness",
      /2.4 mm from the foot's edge/,
    ],
    [
      "a screw too thick for its foot",
      screwed([7, 2.75], 3),
      "bridge.foot.thickness",
      /raise bridge.foot.thickness to 6 mm|2.75 mm from/,
    ],
    [
      "screws through the core's back",
      forced(saddle, { "saddle.screw.depth": 33 }),
      "saddle.screw.depth",
      /core's back/,
    ],
    [
      "a cradle through the core's back",
      forced(cradle, { "cradle.depth": 31 }),
      "cradle.depth",
      /core's back/,
    ],
    [
      "a cradle as wide as the core",
      cradled({ "bridge.foot.width": 58 }),
      "bridge.foot.width",
      /core's side/,
    ],
    ["a cradle into the rods", cradled(intoRods), "cradle.length", /rod's channel/],
    [
      "a cradle past the core's start",
      cradled({
        "cradle.length": 390,
        "core.end": 600,
        "rod.count": 0,
        "pin.upper.at": 30,
        "pin.lower.at": 60,
      }),
      "cradle.length",
      /core's start/,
    ],
    [
      "a cradle past the core's end",
      cradled({ "cradle.length": 130, "core.end": 382 }),
      "cradle.length",
      /core's end|tail pin/,
    ],
  ])("%s", (_, spec, name, found) => {
    const problems = problemsOf(spec);
    expect(problems.length).toBeGreaterThan(0);
    const all = problems.map((problem) => `${problem.name}: ${problem.found} ${problem.hint}`).join("\n");
    expect(
      problems.map((problem) => problem.name),
      all,
    ).toContain(name);
    expect(all).toMatch(found);
    expect(all).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("is told at the screw or the edge in the design, where the order changed nothing", () => {
    const [screw] = problemsOf(screwed([-2, 2.75]));
    expect(screw!.position).toEqual(saddle.places["saddle.bass"]);
    const tight = cradle.bridgeFoot;
    if (tight.kind !== "cradle") throw new Error("no cradle");
    const edges = tight.face.edges.map((edge) => ({ ...edge, corner: 6 }));
    const [edge] = problemsOf({ ...cradle, bridgeFoot: { kind: "cradle", face: { ...tight.face, edges } } });
    expect(edge).toMatchObject({ found: expect.stringContaining("can't be made") });
    expect(
      Object.entries(cradle.places)
        .filter(([id]) => id.startsWith("cradle."))
        .map(([, at]) => at),
    ).toContainEqual(edge!.position);
  });

  it.each<[string, (values: Record<string, number>) => Spec, Record<string, number>]>([
    ["a cradle through the back", cradled, { "cradle.depth": 31 }],
    ["a cradle as wide as the core", cradled, { "bridge.foot.width": 58 }],
    ["a cradle into the rods", cradled, intoRods],
    ["screws through the back", (values) => forced(saddle, values), { "saddle.screw.depth": 33 }],
  ])("is mended by each move that is told: %s", (_, specWith, values) => {
    const [problem] = problemsOf(specWith(values));
    const moves = movesIn(problem!.hint);
    expect(moves.length).toBeGreaterThan(0);
    for (const { id, to } of moves) {
      const spec = specWith({ ...values, [id]: to });
      expect(problemsOf(spec), `${id} ${to}`).toEqual([]);
      const finding = foundBy(modelOf(spec, store), "wall.bridge-foot");
      expect(finding, `${id} ${to}`).toMatchObject({ status: "pass" });
    }
  });
});

describe("the check of the wood under the bridge", () => {
  const found = (spec: Spec) => {
    expect(problemsOf(spec)).toEqual([]);
    return foundBy(modelOf(spec, store), "wall.bridge-foot");
  };

  it.each(everyCount)(
    "passes $design with $count strings, and says nothing of a bridge that stands by itself",
    (at) => {
      const spec = specOf(at.design, at.count);
      const finding = found(spec);
      if (spec.bridgeFoot.kind === "standing") expect(finding).toBeUndefined();
      else
        expect(finding).toMatchObject({
          status: "pass",
          source: expect.stringContaining("default, confirm"),
        });
    },
  );

  it.each<[string, Spec, number, RegExp]>([
    [
      "a cradle a millimetre from the core's sides",
      cradled({ "bridge.foot.width": 56 }),
      1,
      /the core's side breaks out: lower bridge.foot.width to 55/,
    ],
    [
      "a cradle a millimetre over the core's back",
      cradled({ "cradle.depth": 29 }),
      1,
      /the core's back breaks out: lower cradle.depth to 28.5/,
    ],
    [
      "screws half a millimetre over the core's back",
      forced(saddle, { "saddle.screw.depth": 31.5 }),
      0.5,
      /core's back/,
    ],
  ])("finds a planted fault: %s", (_, spec, left, why) => {
    const finding = found(spec)!;
    expect(finding.status).toBe("refuse");
    expect(finding.found).toBeCloseTo(left, 4);
    expect(finding.limit).toBe(1.5);
    expect(finding.why).toMatch(why);
    expect(finding.holds).toEqual(["bridge-place"]);
  });

  it("measures the wood beside a cradle in a core that narrows, and to a pin, by plain sums", () => {
    const taper = 4;
    const spec = cradled({ "core.taper": taper, "bridge.foot.width": 54 });
    const made = instrument(spec, store);
    const slope = (spec.values["core.slope"]!.value * Math.PI) / 180;
    const nutEnd = spec.values["core.start"]!.value + (made.bridgeStand.middle - 5) * Math.cos(slope);
    const half = 58 / 2 + (nutEnd - 328) * Math.tan((taper * Math.PI) / 180);
    const beside = made.bridgeSunkWalls.find(({ between }) => between.endsWith("side"))!;
    // Its corners are rounded with 2 mm, so that its straight end lies that much nearer the tail.
    expect(beside.left).toBeGreaterThan(half - 27 - 1e-6);
    expect(beside.left).toBeLessThan(half - 27 + 2 * Math.tan((taper * Math.PI) / 180) + 1e-6);
    const tail = made.neckPins.find(({ id }) => id === "tail")!;
    const toPin = made.bridgeSunkWalls.find(({ between }) => between.endsWith("tail pin"))!;
    const pinEdge =
      (tail.x - spec.values["core.start"]!.value) / Math.cos(slope) - tail.diameter / 2 / Math.cos(slope);
    expect(toPin.left).toBeCloseTo(pinEdge - (made.bridgeStand.middle + 5), 2);
  });
});
