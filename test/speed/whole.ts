import { cpSync, mkdtempSync, rmSync } from "node:fs";
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

/** An instrument cold: every part as a solid, every number and every check, nothing written; the same with all files of its pack; what it takes of memory; and outlines and numbers after one wing angle, warm. */
export function wholeRows(): Row[] {
  const cli = join(top, "dist", "cli.js");
  // `approve` keeps a report beside the order: that of a copy.
  const folder = mkdtempSync(join(tmpdir(), "speed-"));
  cpSync(join(top, "models"), join(folder, "models"), { recursive: true });
  const order = (name: string) => join(folder, "models", "orders", `${name}.yaml`);
  const make = (name: string) => [cli, "make", order(name), "--out", join(folder, "out")];
  const [winged, onePiece] = ["SY-0417", "SY-0422"] as const;
  try {
    return [
      coldRow(
        "whole instrument cold, winged: numbers, solids, checks (bar: under 45)",
        [cli, "approve", order(winged)],
        7,
      ),
      coldRow(
        "the same with a one-piece body and 7 strings (bar: under 45)",
        [cli, "approve", order(onePiece)],
        7,
      ),
      coldRow("its whole pack, winged (bars: 70 with fixtures, 90 with paper)", make(winged), 7),
      coldRow("its whole pack, one-piece (bars: 70 with fixtures, 90 with paper)", make(onePiece), 7),
      memoryRow("memory of a whole pack (bars: under 600, with fixtures 800)", make(winged)),
      wingAngleRow(),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
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
