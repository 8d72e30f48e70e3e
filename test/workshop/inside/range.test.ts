import { expect, it } from "vitest";
import { findings } from "../../../src/checks/checks.ts";
import { insideChecks } from "../../../src/checks/inside/inside-checks.ts";
import type { Spec } from "../../../src/order/spec.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { modelOf } from "../../../src/workshop/model.ts";
import { specOf } from "../../samples.ts";

const store = memoryStore();
const set = (spec: Spec, id: string, value: number): Spec => ({
  ...spec,
  values: { ...spec.values, [id]: { ...spec.values[id]!, value } },
});

it.each([
  ["sedge", 5],
  ["mallow", 4],
  ["thrift", 7],
  ["bulrush", 5],
] as const)(
  "every template of %s with %i strings holds at both ends of what its recesses follow from",
  (design, count) => {
    const spec = specOf(design, count);
    const ids = Object.keys(spec.values).filter((id) =>
      /^(recess\.|cover\.|inlay\.(length|width|depth|clearance)|cradle\.|rest\.\w+\.(travel|depth))/.test(id),
    );
    let tried = 0;
    for (const id of ids)
      for (const end of ["least", "most"] as const) {
        const value = spec.values[id]![end];
        if (value === undefined) continue;
        tried++;
        for (const { id: check, status, why } of findings(modelOf(set(spec, id, value), store), insideChecks))
          expect(`${id} ${value}: ${check} ${status === "pass" ? "" : `${status} ${why}`}`).toMatch(/ $/);
      }
    expect(tried).toBeGreaterThan(15);
  },
);

it("refuses a mount's slot that no owned cutter has play in, and names the cutter that would do", () => {
  const found = findings(modelOf(set(specOf("sedge", 5), "rest.shoulder.hole", 6), store), insideChecks);
  const large = found.find(({ id }) => id === "cutter.large.wing-bass-back-inside")!;
  expect(large.status).toBe("refuse");
  expect(large.why).toContain("not reached");
  expect(large.why).toMatch(
    /a cutter of 5 mm or less would do, of those owned straight-3 is the largest, but too short/,
  );
  // What isn't its fault isn't told as such.
  expect(found.find(({ id }) => id === "feed.climb.wing-bass-back-inside")!.status).not.toBe("refuse");
  expect(
    found.filter(({ id }) => id.endsWith("neck-back-inside")).every(({ status }) => status === "pass"),
  ).toBe(true);
});
