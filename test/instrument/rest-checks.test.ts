import { describe, expect, it } from "vitest";
import { findings } from "../../src/checks/checks.ts";
import { restChinClear, restChinGrip } from "../../src/checks/rest-chin.ts";
import { endpinWall, restWall } from "../../src/checks/rest-wall.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced } from "../forced.ts";
import { specOf } from "../samples.ts";
import { screwed } from "./rest-parts.ts";

const store = memoryStore();
const sedge = specOf("sedge", 5);
const thrift = specOf("thrift", 5);
const bulrush = specOf("bulrush", 5);

describe("the checks of rests find a planted fault", () => {
  const found = (spec: Spec, id: string) =>
    findings(modelOf(spec, store), [restChinClear, restChinGrip, restWall, endpinWall]).find(
      (one) => one.id === id,
    );

  it.each<[string, Spec, Record<string, number>, string, RegExp]>([
    [
      "a rest near the tailpiece",
      thrift,
      { "rest.chin.clear": 13 },
      "rest.chin.clear",
      /near to the tailpiece: lower rest\.chin\.out to -/,
    ],
    [
      "an edge too thick for the clamp",
      sedge,
      { "rest.chin.grip.most": 21.9 },
      "rest.chin.grip",
      /lower wing\.bass\.thickness/,
    ],
    [
      "an edge too thin for the clamp",
      sedge,
      { "rest.chin.grip.least": 22.1 },
      "rest.chin.grip",
      /raise wing\.bass\.thickness/,
    ],
    [
      "a thin floor over a slot",
      sedge,
      { "rest.shoulder.depth": 20 },
      "rest.wall",
      /lower rest\.shoulder\.depth to 19\.5 mm/,
    ],
    [
      "screws near a recess",
      screwed,
      { "rest.chin.screw.wall": 6 },
      "rest.wall",
      /the chin rest's screw [ab] and/,
    ],
    [
      "a thin wall over the endpin",
      bulrush,
      { "endpin.wall": 9 },
      "endpin.wall",
      /splits under the weight: lower endpin\.depth to/,
    ],
  ])("%s", (_, spec, values, id, why) => {
    expect(found(spec, id)).toMatchObject({ status: "pass", source: expect.stringContaining("confirm") });
    const refused = found(forced(spec, values), id)!;
    expect(refused).toMatchObject({ status: "refuse", why: expect.stringMatching(why) });
    expect(refused.holds.length).toBeGreaterThan(0);
    const moved = /(?:raise|lower) ([a-z.]+) to (-?[\d.]+) mm/.exec(refused.why);
    if (moved !== null)
      expect(found(forced(spec, { ...values, [moved[1]!]: Number(moved[2]) }), id)!.status).toBe("pass");
  });

  it("and say nothing of what an instrument doesn't have", () => {
    expect(found(sedge, "endpin.wall")).toBeUndefined();
    expect(found(bulrush, "rest.chin.clear")).toBeUndefined();
    expect(found(screwed, "rest.chin.grip")).toBeUndefined();
  });
});
