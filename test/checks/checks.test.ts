import { describe, expect, it } from "vitest";
import { checks, findings } from "../../src/checks/checks.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { foundBy } from "../found-by.ts";
import { everyCount, specOf } from "../samples.ts";

const found = (spec: Spec, id: string) => foundBy(modelOf(spec, memoryStore()), id)!;

/** A spec with one value that its design would not allow. */
function forced(spec: Spec, id: string, value: number): Spec {
  return { ...spec, values: { ...spec.values, [id]: { ...spec.values[id]!, value } } };
}

/** A five-string sedge whose G3 is as thick as a rod, so that the crown through all strings leaves E5 in the air. */
function thickFourth(): Spec {
  return specOf("sedge", "[E5, A4, D4, { name: G3, diameter: 5 mm, mass: 60 g/m }, C3]");
}

describe("the checks", () => {
  it.each(everyCount)(
    "of $design with $count strings at nominal refuse nothing, each with stake and source",
    (at) => {
      const spec = specOf(at.design, at.count);
      const all = findings(modelOf(spec, memoryStore()));
      const apply = checks.filter(({ applies }) => applies?.(spec) ?? true);
      expect(all.map(({ id }) => id)).toEqual(apply.map(({ id }) => id).sort());
      expect(apply.map(({ id }) => id).filter((id) => id.startsWith("fret."))).toEqual([]);
      for (const { status, why, source, stake } of all) {
        expect(status).not.toBe("refuse");
        expect(why.length).toBeGreaterThan(10);
        expect(source.length).toBeGreaterThan(10);
        expect(["injury", "spoilage"]).toContain(stake);
      }
    },
  );

  const five = specOf("sedge", 5);
  it.each<[string, Spec, string, string]>([
    ["a gap at the nut under what is playable", forced(five, "nut.gap", 3.8), "gap.playable.nut", "attend"],
    [
      "five strings in four strings' width at the bridge",
      forced(five, "bridge.spread", 32),
      "gap.playable.bridge",
      "attend",
    ],
    ["strings too near each other at the nut", forced(five, "nut.gap", 4.1), "pitch.nut", "attend"],
    ["walls too thin at the nut", forced(five, "nut.gap", 1.4), "wall.nut", "refuse"],
    ["walls too thin outside the nut's outer slots", forced(five, "nut.margin", 1.2), "wall.nut", "refuse"],
    [
      "walls too thin outside the bridge's outer notches",
      forced(five, "bridge.margin", 2.4),
      "wall.bridge",
      "refuse",
    ],
    ["a string that floats over the crown", thickFourth(), "bears.bridge", "refuse"],
    ["walls too thin at the bridge", forced(five, "bridge.wall", 9.3), "wall.bridge", "refuse"],
    ["a tailpiece too low", forced(five, "tailpiece.height", 12), "included-angle", "attend"],
    ["a tailpiece too high", forced(five, "tailpiece.height", 20), "included-angle", "attend"],
  ])("find a planted fault: %s", (_, spec, id, status) => {
    expect(found(five, id).status).toBe("pass");
    expect(found(spec, id)).toMatchObject({ status, why: expect.stringMatching(/raise|lower|bring/) });
  });

  it("say of a pass that rests on general trade knowledge that it is a default to confirm", () => {
    for (const id of ["gap.playable.nut", "pitch.nut", "wall.nut", "wall.bridge"]) {
      expect(found(five, id).source).toContain("default, confirm");
    }
    expect(found(specOf("bulrush", 4), "included-angle").source).toContain("default, confirm");
    expect(found(five, "included-angle").source).not.toContain("confirm");
  });

  it("count the wood between slots as the slots leave it", () => {
    const d = five.strings.map(({ diameter }) => diameter);
    const model = modelOf(five, memoryStore());
    const { nut } = model.instrument.layout;
    const walls = nut.slice(1).map((y, i) => nut[i]! - y - (d[i]! + d[i + 1]!) / 2);
    const margins = [d[0]!, d.at(-1)!].map((diameter) => five.values["nut.margin"]!.value - diameter / 2);
    expect(found(five, "wall.nut").found).toBeCloseTo(Math.min(...walls, ...margins), 9);
  });
});
