import { expect } from "vitest";
import type { Spec } from "../../../src/order/spec.ts";
import { orderText, resolved, sampleText } from "../../samples.ts";
export const sedge = sampleText("designs", "sedge.yaml");

/** Sedge with something of its text changed. */
export function changed(from: string, to: string, text = sedge) {
  expect(text).toContain(from);
  return resolved(orderText("sedge", 4), {}, { designs: { sedge: text.replace(from, to) } });
}

export function specWith(from: string, to: string): Spec {
  const spec = changed(from, to);
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
  return spec.value;
}
