import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { specOf } from "../samples.ts";
import { coldRow } from "./cold-row.ts";
import type { Row } from "./row.ts";
import { warmNumbersRow } from "./warm-numbers.ts";

const top = join(import.meta.dirname, "..", "..");

/** A neck's pack, cold, with what it takes of memory; and its numbers alone after one changed dimension, warm. */
export function neckRows(): Row[] {
  const cli = join(top, "dist", "cli.js");
  const order = join(top, "models", "orders", "SY-0417.yaml");
  const out = mkdtempSync(join(tmpdir(), "speed-"));
  const args = [cli, "make", order, "--only", "neck", "--out", out];
  try {
    return [coldRow("cold neck pack (bar: under 25)", args, 9), memoryRow(args), neckNumbers()];
  } finally {
    rmSync(out, { recursive: true, force: true });
  }
}

function neckNumbers(): Row {
  return warmNumbersRow(
    "warm numbers of a neck after one change (bar: under 10)",
    (thickness) => specOf("sedge", 5, `set:\n  neck.thickness.heel: ${thickness}\n`),
    { from: 20.6, parts: ["neck", "head"] },
  );
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
