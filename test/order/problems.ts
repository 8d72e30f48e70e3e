import { expect } from "vitest";
import type { Checked, Problem } from "../../src/order/problem.ts";
import { orderText } from "../samples.ts";

/** An order with nothing wrong, to spoil in one place. */
export const good = orderText("sedge", 5, "set:\n  string.length: 326 mm\n");

/** What stands in the way of something, each problem told as it should be: name, place, found, allowed and hint, in our words. */
export function toldProblems(checked: Checked<unknown>): readonly Problem[] {
  if (checked.ok) return [];
  for (const { code, position, name, found, allowed, hint } of checked.problems) {
    expect(name).not.toBe("");
    expect(hint).not.toBe("");
    expect((code === "syntax" ? "" : found) + allowed + hint).not.toMatch(
      /Invalid|[Ee]xpected|received|\brecord\b|union/,
    );
    expect(position.line).toBeGreaterThan(0);
    expect(position.column).toBeGreaterThan(0);
    expect(found).not.toBe("");
    expect(allowed).not.toBe("");
    expect(found + allowed).not.toMatch(/undefined|\[object/);
  }
  return checked.problems;
}
