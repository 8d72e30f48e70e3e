import { describe, expect, it } from "vitest";
import { checks, findings } from "../../src/checks/checks.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced } from "../forced.ts";
import { everyCount, specOf } from "../samples.ts";

const ids = ["bow.angle", "bow.board.bass", "bow.board.treble", "bow.clear.bass", "bow.clear.treble"];

/** What the bow's checks find; the others, which ask for much more, are not run. */
const found = (spec: Spec) =>
  findings(
    modelOf(spec, memoryStore()),
    checks.filter(({ id }) => ids.includes(id)),
  );

const seven = specOf("thrift", 7);

describe("the bow's checks", () => {
  it.each(everyCount)("pass $design with $count strings, as defaults to confirm", ({ design, count }) => {
    const all = found(specOf(design, count));
    expect(all.map(({ id }) => id)).toEqual(ids);
    for (const { status, source } of all) {
      expect(status).toBe("pass");
      expect(source).toContain("default, confirm");
    }
  });

  it.each<[string, Record<string, number>, string, string, RegExp]>([
    [
      "strings too near each other at the bridge",
      { "bridge.spread": 48 },
      "bow.angle",
      "deg",
      /on G3 the bow/,
    ],
    ["a design that wants more", { "bow.angle.least": 9.6 }, "bow.angle", "deg", /raise bridge.spread/],
    [
      "a core too wide and too high",
      { "core.slope": 0, "core.width": 100 },
      "bow.clear.treble",
      "mm",
      /treble/,
    ],
    ["the same on the bass side", { "core.slope": -1, "core.width": 110 }, "bow.clear.bass", "mm", /bass/],
    [
      "a core so wide that a little more tilt touches it",
      { "core.width": 300, "core.drop": 100 },
      ...(["bow.clear.treble", "deg", /core.drop/] as const),
    ],
    ["a low high string", { "string.clearance.end.high": 2 }, "bow.board.treble", "mm", /end.high/],
    ["a low low string", { "string.clearance.end.low": 1 }, "bow.board.bass", "mm", /end.low/],
    [
      "a board with too much arch",
      { "fingerboard.radius": 37 },
      "bow.board.treble",
      "mm",
      /fingerboard.radius/,
    ],
  ])("find a planted fault: %s", (_, values, id, unit, why) => {
    const fault = found(forced(seven, values)).find((finding) => finding.id === id)!;
    expect(fault).toMatchObject({ status: "attend", unit, why: expect.stringMatching(why) });
    expect(fault.found).toBeLessThan(fault.limit);
  });
});
