import { describe, expect, it } from "vitest";
import { findings } from "../../src/checks/checks.ts";
import { fixtureRules, guidedChecks } from "../../src/checks/guided/guided-checks.ts";
import type { Path } from "../../src/geometry/path.ts";
import { polygon } from "../../src/geometry/polygon.ts";
import { rectangle } from "../../src/geometry/rectangle.ts";
import { canBeOverruled } from "../../src/order/overrule.ts";
import type { Shaper } from "../../src/order/shop.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import type { Fixture } from "../../src/workshop/guided/fixture.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { orderText, resolved, specOf } from "../samples.ts";

const store = memoryStore();
const five = specOf("sedge", 5);
const file = "wing-treble-router";
const treble = modelOf(five, store)
  .fixtures()
  .find((one) => one.file === file)!;

/** What a check finds in a fixture of which something is other than it was. */
function found(name: string, change: (fixture: Fixture) => Partial<Fixture> = () => ({}), spec: Spec = five) {
  const model = modelOf(spec, store);
  const fixtures = model.fixtures().map((fixture) => {
    if (fixture.file !== file) return fixture;
    const plain = Object.fromEntries(Object.keys(fixture).map((key) => [key, fixture[key as keyof Fixture]]));
    return { ...(plain as Fixture), ...change(fixture) };
  });
  return findings({ ...model, fixtures: () => fixtures }, guidedChecks).find(
    ({ id }) => id === `${name}.${file}`,
  )!;
}

const edgeOf = ({ edge }: Fixture) => {
  if (edge?.kind !== "ok") throw new Error("no edge");
  return edge;
};
const withEdge = (fixture: Fixture, points: Path["points"]): Partial<Fixture> => ({
  edge: { ...edgeOf(fixture), edge: { closed: false, points } },
});
/** The points of an edge as the cut runs along it, and back again into the edge's own order. */
const asCut = (fixture: Fixture, edit: (points: Path["points"]) => Path["points"]) => {
  const { points } = edgeOf(fixture).edge;
  const back = fixture.feed!.way === "back";
  const flip = (list: Path["points"]) => (back ? list.toReversed() : list);
  return withEdge(fixture, flip(edit(flip(points))));
};

describe("something fixed across the cutter from the work", () => {
  it("is told, whatever it is, and what stands behind the edge isn't", () => {
    expect(found("trapped")).toMatchObject({ status: "pass", found: 0 });
    const { edge } = edgeOf(treble);
    const middle = edge.points[Math.floor(edge.points.length / 2)]!;
    const away = treble.feed!.tool.reduce((best, one) => {
      const far = ({ at }: typeof one) => Math.hypot(at.x - middle.x, at.y - middle.y);
      return far(one) < far(best) ? one : best;
    }).at;
    // From the edge through the arrow, which stands on the cutter's side, and on.
    const at = { x: middle.x + 6 * (away.x - middle.x), y: middle.y + 6 * (away.y - middle.y) };
    for (const what of ["stop", "clamp", "pin"] as const) {
      const fence = { id: "fence", what, margin: 6, path: rectangle(at.x - 5, at.y - 5, at.x + 5, at.y + 5) };
      expect(
        found("trapped", ({ kept }) => ({ kept: [...kept, fence] })),
        what,
      ).toMatchObject({
        ...{ status: "refuse", stake: "injury", found: 1 },
        why: expect.stringContaining("fence stands across the cutter"),
      });
    }
  });
});

describe("a fixture or a router that tips", () => {
  it("is told of a hand-held router half of whose base rests on nothing, and not of one on a plate", () => {
    const spec = specOf("sedge", 5, `fixtures:\n  ${file}: { machine: hand-router }\n`);
    const tips = found("tip", undefined, spec);
    expect(tips).toMatchObject({ status: "refuse", stake: "injury", limit: 0.5 });
    expect(tips.found).toBeGreaterThan(0.05);
    expect(tips.found).toBeLessThan(0.5);
    expect(tips.why).toContain("outrigger");
    const plate = (fixture: Fixture) => ({
      edge: { ...edgeOf(fixture), template: rectangle(-600, -600, 600, 600) },
    });
    expect(found("tip", plate, spec)).toMatchObject({ status: "pass", found: 1 });
    const unknown = ({ setUp }: Fixture) => ({
      setUp: { ...setUp!, machine: { ...setUp!.machine, base: undefined } as never },
    });
    expect(found("tip", unknown, spec)).toMatchObject({ status: "attend", found: 0 });
  });

  it("is told of a fixture taller than it is wide, and of one that hangs far off a table", () => {
    expect(found("tip")).toMatchObject({ status: "pass", limit: 600 });
    expect(found("tip", () => ({ thickness: 900 }))).toMatchObject({ status: "refuse", found: 912 });
    const long = (fixture: Fixture) => ({
      edge: { ...edgeOf(fixture), template: rectangle(-100, -150, 900, 150) },
    });
    expect(found("tip", long)).toMatchObject({ status: "attend", why: expect.stringContaining("stand") });
  });
});

describe("where a cut begins and ends", () => {
  it("is refused at a corner: a run-in cut off, and one that turns", () => {
    expect(found("start.corner")).toMatchObject({ status: "pass", limit: treble.setUp!.cutter.diameter / 2 });
    expect(found("start.corner").found).toBeGreaterThan(49);
    expect(found("start.corner", (one) => asCut(one, (points) => points.slice(1)))).toMatchObject({
      ...{
        status: "refuse",
        stake: "injury",
        why: expect.stringMatching(/begins at a corner.*starting pin/),
      },
    });
    const aside = (one: Fixture) =>
      asCut(one, ([first, ...rest]) => [{ ...first!, x: first!.x + 30 }, ...rest]);
    expect(found("start.corner", aside)).toMatchObject({ status: "refuse", found: 0 });
    // The other end is no beginning.
    expect(found("start.corner", (one) => asCut(one, (points) => points.slice(0, -1))).status).toBe("pass");
  });

  it("may be at a starting pin instead, if that stands where it should", () => {
    const pinAt = (far: number) => (one: Fixture) => {
      const { points } = one.run.path;
      const start = one.feed!.way === "along" ? points[0]! : points.at(-1)!;
      const hole = { at: { x: start.x + far, y: start.y }, diameter: 12, what: "starting pin" };
      return {
        ...asCut(one, (own) => own.slice(1)),
        holding: { ...one.holding!, holes: [...one.holding!.holes, hole] },
      };
    };
    expect(found("start.corner", pinAt(75))).toMatchObject({ status: "pass", found: expect.any(Number) });
    expect(found("start.corner", pinAt(20)).status).toBe("refuse");
  });

  it("is pointed out where it ends across end grain or against it, unless that is waste", () => {
    const run = (points: readonly (readonly [number, number])[]) => () => ({
      run: {
        path: { closed: false, points: points.map(([x, y]) => ({ x, y, bulge: 0 })) },
        uses: ["cut" as const],
      },
      feed: { ...treble.feed!, way: "along" as const },
    });
    // Wood on the left: along x, out leads down.
    const end = (x: number, y: number) =>
      found(
        "exit.unsupported",
        run([
          [0, 0],
          [100, 0],
          [100 + x, y],
        ]),
      );
    expect(end(50, 0)).toMatchObject({ status: "pass", found: 0 });
    expect(end(50, 1)).toMatchObject({ status: "pass" });
    expect(end(0, 50)).toMatchObject({ status: "attend", stake: "spoilage", found: 90, limit: 60 });
    expect(end(50, -20)).toMatchObject({
      status: "attend",
      why: expect.stringMatching(/against.*leave 6 mm/),
    });
    expect(end(50, 20)).toMatchObject({ status: "pass" });
    const backed = {
      ...run([
        [0, 0],
        [100, 0],
        [100, 50],
      ])(),
      waste: 12,
    };
    expect(found("exit.unsupported", () => backed as never)).toMatchObject({ status: "pass" });
    // One end of two: the last for a cut along its run.
    expect(found("exit.unsupported", () => ({ ...backed, waste: [0, 12] }) as never).status).toBe("pass");
    expect(found("exit.unsupported", () => ({ ...backed, waste: [12, 0] }) as never).status).toBe("attend");
    // Half of an end whose other half is cut in another set-up.
    const halves = (y: number) => ({
      ...run([
        [0, 0],
        [100, 0],
        [100, 50],
      ])(),
      outline: polygon([
        { x: 0, y: 0 },
        { x: 100, y: 0 },
        { x: 100, y: 50 },
        { x: 100, y },
        { x: 0, y: 60 },
      ]),
    });
    expect(found("exit.unsupported", () => halves(100)).status).toBe("pass");
    expect(
      found("exit.unsupported", () => ({ ...halves(100), outline: rectangle(0, 0, 100, 50) })).status,
    ).toBe("attend");
  });
});

describe("work, collar and template", () => {
  it("short work that nothing holds is refused, held or long work isn't", () => {
    expect(found("work.small")).toMatchObject({ status: "pass" });
    const loose = ({ kept }: Fixture) => ({ kept: kept.filter(({ what }) => what !== "clamp") });
    expect(found("work.small", loose)).toMatchObject({ status: "refuse", stake: "injury", limit: 305 });
    const long = (one: Fixture) => ({ ...loose(one), outline: rectangle(0, 0, 306, 40) });
    expect(found("work.small", long)).toMatchObject({ status: "pass", found: 306 });
  });

  it("a collar under the cutter is refused, or pointed out where the shop allows it", () => {
    const shaper = five.shop.machines.find((one): one is Shaper => one.kind === "shaper")!;
    const collar = five.shop.guides.find(({ kind }) => kind === "collar")!;
    const set =
      (template: "over" | "under", under: "no" | "allowed") =>
      ({ setUp }: Fixture) => ({
        ...{ setUp: { ...setUp!, machine: { ...shaper, "collar-under": under }, guide: collar }, template },
      });
    expect(found("collar.under")).toMatchObject({ status: "pass", found: 0 });
    expect(found("collar.under", set("over", "no"))).toMatchObject({ status: "pass", found: 0 });
    expect(found("collar.under", set("under", "no"))).toMatchObject({
      status: "refuse",
      stake: "injury",
      found: 1,
    });
    expect(found("collar.under", set("under", "allowed"))).toMatchObject({ status: "attend", found: 1 });
  });

  it("a printed template is refused", () => {
    expect(found("printed.guide")).toMatchObject({ status: "pass", found: 0 });
    const printed = ({ sheet }: Fixture) => ({ sheet: { ...sheet!, material: "petg" } as never });
    expect(found("printed.guide", printed)).toMatchObject({ status: "refuse", stake: "injury", found: 1 });
  });

  it("a fixture without an edge is refused with what to do, whichever way it has none", () => {
    expect(found("edge.none")).toMatchObject({ status: "pass", found: 1 });
    for (const [kind, words] of [
      ["not-open", /two set-ups/],
      ["meets-itself", /come across one another/],
      ["no-edge", /smaller cutter/],
      ["untold", /name another cutter/],
    ] as const)
      expect(
        found("edge.none", () => ({ edge: { kind } })),
        kind,
      ).toMatchObject({
        ...{ status: "refuse", found: 0, why: expect.stringMatching(words) },
      });
  });

  it("an edge that is cut against the grain where turning it over would mend it is pointed out", () => {
    const grain = (against: number, along: number) => () => ({
      grain: { against, with: along, along: 0, "end grain": 0 },
    });
    expect(found("grain.against", grain(10, 200)).status).toBe("pass");
    expect(found("grain.against", grain(200, 10))).toMatchObject({
      ...{ status: "attend", found: 200, limit: 10, why: expect.stringContaining("turned over") },
    });
  });
});

it("these rules are tried on every fixture, and what protects someone from them is never overruled", () => {
  const names = [
    "trapped",
    "tip",
    "start.corner",
    "exit.unsupported",
    "work.small",
    "collar.under",
    "printed.guide",
  ];
  expect(fixtureRules.map(({ name }) => name)).toEqual(expect.arrayContaining(names));
  for (const name of ["trapped", "work.small", "printed.guide"]) {
    expect(canBeOverruled(`${name}.${file}`), name).toBe(false);
    expect(
      resolved(orderText("sedge", 5, `overrule:\n  - { check: ${name}.${file}, reason: no }\n`)).ok,
    ).toBe(false);
  }
  for (const name of ["tip", "exit.unsupported"]) expect(canBeOverruled(`${name}.${file}`), name).toBe(true);
});
