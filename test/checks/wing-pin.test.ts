import { expect, it } from "vitest";
import { findings } from "../../src/checks/checks.ts";
import { wingPin } from "../../src/checks/wing-pin.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced } from "../forced.ts";
import { everyCount, specOf } from "../samples.ts";

const found = (spec: Spec) => findings(modelOf(spec, memoryStore()), [wingPin])[0];

it.each(everyCount)(
  "wing.pin passes $design with $count strings, and says nothing where there are no wings",
  ({ design, count }) => {
    const spec = specOf(design, count);
    const finding = found(spec);
    if (spec.wings === null) expect(finding).toBeUndefined();
    else
      expect(finding).toMatchObject({
        status: "pass",
        stake: "spoilage",
        source: expect.stringContaining("confirm"),
      });
  },
);

it("wing.pin finds the wall of the worked wing, and refuses where it is thinner than wanted", () => {
  const spec = specOf("sedge", 5);
  // Middle of 22, less what a level pin 20 long climbs in a wing canted by 12, less half of a hole of 6.2 across.
  const turn = Math.PI / 15;
  expect(found(spec)!.found).toBeCloseTo(11 - 20 * Math.sin(turn) - 3.1 * Math.cos(turn), 5);
  const deep = found(forced(spec, { "wing.treble.pin.depth": 22.5, "wing.treble.pin.wall": 4 }))!;
  expect(deep).toMatchObject({
    status: "refuse",
    limit: 4,
    why: expect.stringContaining("lower wing.treble.pin.depth to"),
  });
  expect(deep.holds).toEqual(["wing-bass", "joint-bass", "wing-treble", "joint-treble"]);
  const to = Number(/pin\.depth to ([\d.]+)/.exec(deep.why)![1]);
  expect(found(forced(spec, { "wing.treble.pin.depth": to, "wing.treble.pin.wall": 4 }))!.status).toBe(
    "pass",
  );
});
