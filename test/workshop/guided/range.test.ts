import { expect, it } from "vitest";
import { findings } from "../../../src/checks/checks.ts";
import { guidedChecks } from "../../../src/checks/guided/guided-checks.ts";
import { contradictions } from "../../../src/instrument/contradictions.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { modelOf } from "../../../src/workshop/model.ts";
import { designs, specOf } from "../../samples.ts";

/** What neck, board and body follow from, and so their fixtures. */
const shaping = /^(neck|head|core|nut|fingerboard|body|saw|pin|rod|string\.length)\b/;

/** By day one in so many of the ends of ranges is tried, by night all. */
const every = process.env.NIGHTLY === undefined ? 12 : 1;

it("fixtures of neck, board and body are refused at no end of any dimension's range that gives an instrument", () => {
  const store = memoryStore();
  const counted = { tried: 0, atOdds: 0, ends: 0 };
  for (const [design, counts] of Object.entries(designs)) {
    const base = specOf(design, counts.at(-1)!);
    for (const value of Object.values(base.values).filter(({ id }) => shaping.test(id)))
      for (const end of [value.least, value.most]) {
        if (counted.ends++ % every !== 0) continue;
        const spec = { ...base, values: { ...base.values, [value.id]: { ...value, value: end } } };
        const model = modelOf(spec, store);
        if (contradictions(spec, model.instrument).length > 0) {
          counted.atOdds++;
          continue;
        }
        counted.tried++;
        const refused = findings(model, guidedChecks).filter(
          ({ status, subject }) => status === "refuse" && !subject.startsWith("wing-"),
        );
        expect(
          refused.map(({ id, why }) => `${id}: ${why}`),
          `${design} ${value.id} ${end}`,
        ).toEqual([]);
      }
  }
  expect(counted.tried).toBeGreaterThan(counted.ends / every / 2);
  expect(counted.ends).toBeGreaterThan(400);
}, 400_000);
