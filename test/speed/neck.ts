import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { specOf } from "../samples.ts";
import { coldRow } from "./cold-row.ts";
import { memoryRow } from "./memory-row.ts";
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
    return [
      coldRow("cold neck pack (bar: under 25)", args, 9),
      memoryRow("memory of a neck pack (bar: under 400)", args),
      neckNumbers(),
    ];
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
