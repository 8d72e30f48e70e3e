import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore, type Store } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";
import { coldRow } from "./cold-row.ts";
import { memoryRow } from "./memory-row.ts";
import { median } from "./pairs.ts";
import type { Row } from "./row.ts";

const top = join(import.meta.dirname, "..", "..");

/** A whole instrument with every part, check and drawing, cold, with what it takes of memory; and all its outlines and numbers after one wing angle, warm. */
export function wholeRows(): Row[] {
  const cli = join(top, "dist", "cli.js");
  const out = mkdtempSync(join(tmpdir(), "speed-"));
  const args = (order: string) => [cli, "make", join(top, "models", "orders", `${order}.yaml`), "--out", out];
  try {
    return [
      coldRow("whole instrument cold, winged (bar: under 45)", args("SY-0417"), 7),
      coldRow("whole instrument cold, one-piece body and 7 strings (bar: under 45)", args("SY-0422"), 7),
      memoryRow("memory of a whole instrument (bar: under 600)", args("SY-0417")),
      wingAngleRow(),
    ];
  } finally {
    rmSync(out, { recursive: true, force: true });
  }
}

/** Every number and every outline, and whether the instrument can be built, after one wing's cant has changed by a thousandth. */
function wingAngleRow(): Row {
  const drawn = (store: Store, cant: number) => {
    const spec = specOf("sedge", 5, `set:\n  wing.treble.cant: ${cant}\n`);
    const began = performance.now();
    const model = modelOf(spec, store);
    if (contradictions(spec, model.instrument).length > 0)
      throw new Error("an instrument that can't be built");
    for (const { of } of dimensionsOf(spec)) of(model);
    for (const { of } of flatsOf(spec)) void of(model, store).value;
    return performance.now() - began;
  };
  const warm = memoryStore();
  for (let i = 0; i < 20; i++) drawn(warm, 11 + i / 1000);
  const pairs = Array.from({ length: 25 }, (_, i) => ({
    warm: drawn(warm, 11.5 + i / 1000),
    fresh: drawn(memoryStore(), 11.5 + i / 1000),
  }));
  return {
    name: "one wing angle, warm: outlines and numbers (bar: under 30)",
    ...{ median: median(pairs.map((pair) => pair.warm)), unit: "ms", against: "an empty store" },
    ratio: median(pairs.map(({ warm: ours, fresh }) => ours / fresh)),
  };
}
