import { describe, expect, it } from "vitest";
import { memoryStore } from "../../src/step/store.ts";
import { baseFrame, inBase } from "../../src/workshop/guided/base-frame.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { toldProblems } from "../order/problems.ts";
import { orderText, resolved, specOf } from "../samples.ts";
import { fixtureIn, told } from "./spoilt-fixture.ts";

const store = memoryStore();
const file = "wing-treble-router";
const other = "wing-bass-router";
const own = fixtureIn(specOf("sedge", 5), file);
const joint = own.joined[0]!.points;
const frame = baseFrame(joint[0]!, joint[1]!, own.run.path.points[2]!);

const written = (clamps: readonly string[], handholds: readonly string[] = []) =>
  `fixtures:\n  ${file}:\n${clamps.length > 0 ? `    clamps: [${clamps.join(", ")}]\n` : ""}${handholds.length > 0 ? `    handholds: [${handholds.join(", ")}]\n` : ""}`;
const clampAt = (along: number, away: number, clamp = "toggle-m") =>
  `{ clamp: ${clamp}, at: [${along.toFixed(6)} mm, ${away.toFixed(6)} mm] }`;
const handAt = (along: number, away: number) => `[${along.toFixed(6)} mm, ${away.toFixed(6)} mm]`;
const modelWith = (more: string) => modelOf(specOf("sedge", 5, more), store);

/** Where the program's own clamps and handholds stand, as a person would write them. */
const clampsNow = own.holding!.clamps.map(({ id, base }) => {
  const corners = base.points.map((at) => inBase(frame, at));
  const along = corners.reduce((sum, { s }) => sum + s, 0) / 4;
  return { id, along, away: Math.min(...corners.map(({ h }) => h)) };
});
const handsNow = own.holding!.handholds.map(({ at }) => inBase(frame, at));
const all = (by: { clamp?: number; along?: number; hand?: number } = {}) =>
  written(
    clampsNow.map(({ id, along, away }, i) =>
      clampAt(along + (i === 0 ? (by.along ?? 0) : 0), away + (i === 0 ? (by.clamp ?? 0) : 0), id),
    ),
    handsNow.map(({ s, h }) => handAt(s, h + (by.hand ?? 0))),
  );

describe("a person's own places", () => {
  it("that are the program's come to the same fixture", () => {
    const same = modelWith(all())
      .fixtures()
      .find((one) => one.file === file)!;
    expect(same.holding!.clamps).toHaveLength(own.holding!.clamps.length);
    for (const [i, { base, arm, pad }] of same.holding!.clamps.entries()) {
      const wanted = own.holding!.clamps[i]!;
      expect(Math.hypot(pad.x - wanted.pad.x, pad.y - wanted.pad.y)).toBeLessThan(1e-4);
      for (const [path, to] of [
        [base, wanted.base],
        [arm, wanted.arm],
      ] as const)
        for (const [k, { x, y }] of path.points.entries())
          expect(Math.hypot(x - to.points[k]!.x, y - to.points[k]!.y)).toBeLessThan(1e-4);
    }
    expect(same.holding!.holes).toHaveLength(own.holding!.holes.length);
    for (const name of ["clamp.swept", "hand.near", "hold.none", "metal", "virtual-cut"])
      expect(told(modelWith(all()), name, file).status, name).toBe("pass");
  });

  const kept = own.cut?.kind === "ok" ? own.cut.kept : [];
  const room = kept.find(({ id }) => id === "arm of clamp 1")!.gap - 6;

  it("a clamp 5 mm farther over the work than there is room is found by the virtual cut", () => {
    expect(room).toBeGreaterThan(0);
    expect(told(modelWith(all({ clamp: -room - 5 })), "clamp.swept", file)).toMatchObject({
      ...{ status: "refuse", stake: "injury" },
    });
  });

  it("handholds nearer than 305 are looked at, under 152 or off the base refused, and none at all too", () => {
    const spare = told(modelOf(specOf("sedge", 5), store), "hand.near", file).found - 305;
    expect(told(modelWith(all({ hand: -spare - 30 })), "hand.near", file).status).toBe("attend");
    expect(told(modelWith(all({ hand: -spare - 160 })), "hand.near", file).status).toBe("refuse");
    const off = told(modelWith(all({ hand: 60 })), "hand.near", file);
    expect(off).toMatchObject({ status: "refuse", why: expect.stringContaining("lies off the base") });
  });

  it("a clamp that holds nothing doesn't count: off the base, in another, in the batten, beside the work", () => {
    const [first, second] = clampsNow;
    const with2 = (clamp: string) =>
      modelWith(written([clampAt(first!.along, first!.away, first!.id), clamp]));
    for (const [clamp, words] of [
      [clampAt(second!.along, 380, second!.id), "stands off the base"],
      [clampAt(first!.along + 10, first!.away + 10, first!.id), "stands in clamp 1"],
      [clampAt(second!.along, 8, second!.id), "stands in the batten"],
      [clampAt(second!.along, 70, second!.id), "presses beside the work"],
    ] as const)
      expect(told(with2(clamp), "hold.none", file)).toMatchObject({
        ...{ status: "refuse", found: 1, limit: 2, stake: "injury", why: expect.stringContaining(words) },
      });
    const alone = modelWith(written([clampAt(first!.along, first!.away, first!.id)]));
    expect(told(alone, "hold.none", file)).toMatchObject({ status: "refuse", found: 1 });
  });

  it("change that fixture alone, and stand on its drawing", () => {
    const [before, after] = ["", all({ hand: -5 })].map((more) => modelWith(more).fixtures());
    const of = (fixtures: typeof before, name: string) => fixtures!.find((one) => one.file === name)!;
    expect(of(after, other).holding).toBe(of(before, other).holding);
    expect(of(after, file).edge).toBe(of(before, file).edge);
    expect(of(after, file).holding!.handholds).not.toEqual(of(before, file).holding!.handholds);
    const bolts = of(after, file).holding!.holes.filter(({ what }) => what === "handhold");
    expect(bolts.map(({ at }) => at)).toEqual(of(after, file).holding!.handholds.map(({ at }) => at));
  });
});

describe("places that can't be", () => {
  it.each([
    [
      "a clamp that isn't owned",
      written([clampAt(30, 30, "toggle-l")]),
      "did you mean toggle-",
      "unknown-name",
    ],
    [
      "more than are owned",
      written(Array.from({ length: 9 }, () => clampAt(30, 30))),
      "leave one out",
      "range",
    ],
    ["one length for a place", `fixtures:\n  ${file}: { handholds: [[30 mm]] }\n`, "", "count"],
    ["an angle for a length", `fixtures:\n  ${file}: { handholds: [[30 deg, 40 mm]] }\n`, "", "unit"],
    ["no list", `fixtures:\n  ${file}: { clamps: toggle-m }\n`, "", "type"],
  ])("%s: told at its place", (_, more, hint, code) => {
    const [problem] = toldProblems(resolved(orderText("sedge", 5, more)));
    expect(problem!.code).toBe(code);
    expect(problem!.hint).toContain(hint);
    expect(problem!.position.line).toBeGreaterThan(7);
  });
});
