import { describe, expect, it } from "vitest";
import { settables } from "../../src/order/catalogue.ts";
import { followsFrom } from "../../src/order/derived.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { everyCount, specOf } from "../samples.ts";

/** What other programs count on, of the numbers that there are by now. */
const promised = [
  ...[
    "string.length",
    "string.A4.length",
    "string.A4.tension",
    "nut.spread",
    "nut.gap",
    "nut.margin",
    "nut.width",
  ],
  ...[
    "string.clearance.nut.high",
    "string.clearance.nut.low",
    "string.clearance.end.high",
    "string.clearance.end.low",
  ],
  ...[
    "bridge.spread",
    "bridge.gap",
    "bridge.radius",
    "bridge.height",
    "bridge.tilt",
    "bridge.included-angle",
  ],
  ...["tailpiece.height", "tailpiece.angle", "afterlength", "fingerboard.length", "fingerboard.radius"],
  ...["fingerboard.edge", "fingerboard.margin.end", "fingerboard.width.nut", "fingerboard.width.end"],
  ...["core.start", "core.end", "core.drop", "core.slope", "core.width"],
];

describe("the dimensions", () => {
  it("have the names that other programs count on", () => {
    const ids = dimensionsOf(specOf("sedge", 5)).map(({ id }) => id);
    for (const id of promised) expect(ids).toContain(id);
  });

  it("say of a number that rests on a string's own how far it can be trusted", () => {
    const spec = specOf("sedge", "[E5, { name: A4, mass: 0.65 g/m }, D4, G3]");
    const label = (id: string) => dimensionsOf(spec).find((dimension) => dimension.id === id)?.label;
    expect(label("string.A4.tension")).toContain("the string maker's own figure");
    expect(label("string.D4.tension")).toContain("computed: default, confirm");
    expect(label("nut.D4.bottom")).toContain("general trade knowledge: default, confirm");
  });

  it.each(everyCount)(
    "of $design with $count strings have each name once, and each that can't be set says why",
    (at) => {
      const ids = dimensionsOf(specOf(at.design, at.count)).map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      for (const id of ids) {
        if (settables.has(id)) expect(followsFrom(id), id).toBeUndefined();
        else expect(followsFrom(id), id).not.toHaveLength(0);
      }
    },
  );

  it("that are derived name, to change instead, only dimensions that can be set, or say it in words", () => {
    for (const { id } of dimensionsOf(specOf("sedge", 5))) {
      for (const from of followsFrom(id) ?? [])
        expect(settables.has(from) || from.includes(" "), from).toBe(true);
    }
  });
});
