import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { coldRow } from "./cold-row.ts";
import type { Row } from "./row.ts";

const top = join(import.meta.dirname, "..", "..");

/** The commands, cold, as multiples of a bare start of Node. */
export function commandRows(): Row[] {
  const cli = join(top, "dist", "cli.js");
  const order = join(top, "models", "orders", "SY-0417.yaml");
  const out = mkdtempSync(join(tmpdir(), "speed-"));
  try {
    return [
      coldRow("cold --help (bar: under 2)", [cli, "--help"], 15),
      coldRow("cold check (bar: under 8)", [cli, "check", order], 11),
      coldRow("cold make", [cli, "make", order, "--out", out], 11),
    ];
  } finally {
    rmSync(out, { recursive: true, force: true });
  }
}
