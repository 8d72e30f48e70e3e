import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore, type Store } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";
import { coldRow } from "./cold-row.ts";
import { median } from "./pairs.ts";
import type { Row } from "./row.ts";

const top = join(import.meta.dirname, "..", "..");

/** A neck's pack, cold, with what it takes of memory; and its numbers alone after one changed dimension, warm. */
export function neckRows(): Row[] {
  const cli = join(top, "dist", "cli.js");
  const order = join(top, "models", "orders", "SY-0417.yaml");
  const out = mkdtempSync(join(tmpdir(), "speed-"));
  const args = [cli, "make", order, "--only", "neck", "--out", out];
  try {
    return [coldRow("cold neck pack (bar: under 25)", args, 9), memoryRow(args), numbersRow()];
  } finally {
    rmSync(out, { recursive: true, force: true });
  }
}

/** The most memory that a process held, as it says itself when it ends. */
function memoryRow(args: readonly string[]): Row {
  const tell =
    'data:text/javascript,process.on("exit",()=>console.error("most "+process.resourceUsage().maxRSS))';
  const most = (argv: readonly string[]) => {
    const { stderr } = spawnSync(process.execPath, ["--import", tell, ...argv], { encoding: "utf8" });
    return Number(/most (\d+)/.exec(stderr)![1]) / 1024;
  };
  const [full, bare] = [most(args), most(["-e", "0"])];
  return {
    name: "memory of a neck pack (bar: under 400)",
    median: full,
    unit: "MB",
    against: "node -e 0",
    ratio: full / bare,
  };
}

/** Every number of neck and head, and whether the neck can be built, after one dimension has changed a little. */
function numbersRow(): Row {
  const numbers = (store: Store, thickness: number) => {
    const spec = specOf("sedge", 5, `set:\n  neck.thickness.heel: ${thickness}\n`);
    const began = performance.now();
    const model = modelOf(spec, store);
    if (contradictions(spec, model.instrument).length > 0) throw new Error("a neck that can't be built");
    for (const { part, of } of dimensionsOf(spec)) if (part === "neck" || part === "head") of(model);
    return performance.now() - began;
  };
  const warm = memoryStore();
  for (let i = 0; i < 20; i++) numbers(warm, 20.6 + i / 1000);
  const pairs = Array.from({ length: 25 }, (_, i) => ({
    warm: numbers(warm, 20.7 + i / 1000),
    fresh: numbers(memoryStore(), 20.7 + i / 1000),
  }));
  return {
    ...{
      name: "warm numbers of a neck after one change (bar: under 10)",
      median: median(pairs.map((pair) => pair.warm)),
    },
    ...{
      unit: "ms",
      against: "an empty store",
      ratio: median(pairs.map(({ warm: ours, fresh }) => ours / fresh)),
    },
  };
}
