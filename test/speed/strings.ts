import { frettedSpec } from "../samples.ts";
import type { Row } from "./row.ts";
import { warmNumbersRow } from "./warm-numbers.ts";

/** The string side's numbers without solids: a fretted thrift of seven strings after its strings lie a little higher. */
export function stringRows(): Row[] {
  return [
    warmNumbersRow(
      "warm numbers of the string side after one change (bar: under 20)",
      (clearance) => frettedSpec(7, `set:\n  string.clearance.end.high: ${clearance}\n`),
      { from: 2, parts: ["strings", "nut", "bridge", "fingerboard", "tailpiece", "bow"] },
    ),
  ];
}
