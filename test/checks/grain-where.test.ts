import { describe, expect, it } from "vitest";
import { pathLength } from "../../src/geometry/measure.ts";
import { placeAlong } from "../../src/geometry/path-measures/place-along.ts";
import { memoryStore } from "../../src/step/store.ts";
import type { Fixture } from "../../src/workshop/guided/fixture.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";
import { fixtureIn, spoilt, told } from "./spoilt-fixture.ts";

const store = memoryStore();
const each = [
  [specOf("sedge", 5), "wing-bass-router"],
  [specOf("sedge", 6, "", { hand: "left" }), "wing-treble-router"],
  [specOf("mallow", 5), "neck-shaper"],
  [specOf("thrift", 7), "body-bass-router"],
] as const;

/** The stretches against the grain that a check tells: where each begins and how long it is. */
const stretchesIn = (why: string) =>
  [...why.matchAll(/from (-?[\d.]+), (-?[\d.]+) over ([\d.]+)/g)].map(([, x, y, long]) => ({
    ...{ x: Number(x), y: Number(y), long: Number(long) },
  }));

/** Every half millimetre of a run that is cut against the grain, by chords alone: the fibres, along x, dive into the wood ahead of the cut. */
function against({ run: { path }, setUp }: Fixture): { x: number; y: number }[] {
  const [step, length] = [0.5, pathLength(path)];
  const back = setUp!.machine.rotation === "ccw" ? 1 : -1;
  const at = (s: number) => {
    const place = placeAlong(path, s);
    if (place.kind !== "ok") throw new Error(place.kind);
    return place.point;
  };
  return Array.from({ length: Math.floor(length / step) }, (_, i) => [
    at(i * step),
    at((i + 1) * step),
  ]).flatMap(([from, to]) => {
    const [dx, dy] = [to!.x - from!.x, to!.y - from!.y];
    // Wood on the left of the run; a spindle that turns counter-clockwise cuts back along it.
    const cut = { x: -back * dx, y: -back * dy };
    const out = { x: dy, y: -dx };
    const angle = (Math.atan(Math.abs(dy / dx)) * 180) / Math.PI;
    const dives = cut.x * out.x < 0;
    return angle > 2 && angle <= 60 && dives ? [{ x: from!.x, y: from!.y }] : [];
  });
}

describe.each(each)("what is cut against the grain", (spec, file) => {
  const fixture = fixtureIn(spec, file);
  const near = (list: readonly { x: number; y: number }[], x: number, y: number) =>
    list.some((one) => Math.hypot(one.x - x, one.y - y) < 1.1);

  it(`is told by place and length on ${spec.order} ${file}`, () => {
    const finding = told(modelOf(spec, store), "grain.against", file);
    const list = stretchesIn(finding.why);
    const seen = against(fixture);
    expect(list.reduce((sum, { long }) => sum + long, 0)).toBeCloseTo(finding.found, 0);
    expect(seen.length / 2).toBeGreaterThan(finding.found - 4);
    expect(seen.length / 2).toBeLessThan(finding.found + 4);
    expect(list.length).toBeGreaterThan(0);
    for (const { x, y } of list) expect(near(seen, x, y), `${x}, ${y}`).toBe(true);
  });

  it("is found to be elsewhere when with and against are mixed up", () => {
    const swap = { with: "against", against: "with", along: "along", "end grain": "end grain" } as const;
    const wrong = spoilt(spec, file, ({ stretches }) => ({
      stretches: stretches!.map((one) => ({ ...one, grain: swap[one.grain] })),
    }));
    const list = stretchesIn(told(wrong, "grain.against", file).why);
    expect(list.length).toBeGreaterThan(0);
    expect(list.every(({ x, y }) => near(against(fixture), x, y))).toBe(false);
  });
});
