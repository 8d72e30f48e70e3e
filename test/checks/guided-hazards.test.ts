import { describe, expect, it } from "vitest";
import { fixtureRules } from "../../src/checks/guided/guided-checks.ts";
import { rectangle } from "../../src/geometry/rectangle.ts";
import { canBeOverruled } from "../../src/order/overrule.ts";
import type { Shaper } from "../../src/order/shop.ts";
import type { Fixture } from "../../src/workshop/guided/fixture.ts";
import { orderText, resolved, specOf } from "../samples.ts";
import { file, five, found, treble } from "./hazard-parts.ts";
import { edgeIn } from "./spoilt-fixture.ts";

describe("something fixed across the cutter from the work", () => {
  it("is told, whatever it is, and what stands behind the edge isn't", () => {
    expect(found("trapped")).toMatchObject({ status: "pass", found: 0 });
    const { edge } = edgeIn(treble);
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
      edge: { ...edgeIn(fixture), template: rectangle(-600, -600, 600, 600) },
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
      edge: { ...edgeIn(fixture), template: rectangle(-100, -150, 900, 150) },
    });
    expect(found("tip", long)).toMatchObject({ status: "attend", why: expect.stringContaining("stand") });
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
