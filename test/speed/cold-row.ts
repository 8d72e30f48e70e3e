import { spawnSync } from "node:child_process";
import { median } from "./pairs.ts";
import type { Row } from "./row.ts";

/** Whole cold processes, timed in turn with `node -e 0`: one pair after another, so that a busy machine slows both alike. */
export function coldRow(name: string, args: readonly string[], runs: number): Row {
  const time = (argv: readonly string[]) => {
    const began = performance.now();
    const { status } = spawnSync(process.execPath, argv, { stdio: "ignore" });
    if (status !== 0) throw new Error(`${name} ended with ${status}`);
    return performance.now() - began;
  };
  const pairs = Array.from({ length: runs + 1 }, () => {
    const bare = time(["-e", "0"]);
    return { bare, full: time(args) };
  }).slice(1);
  return {
    ...{ name, median: median(pairs.map(({ full }) => full)), unit: "ms", against: "node -e 0" },
    ratio: median(pairs.map(({ full, bare }) => full / bare)),
  };
}
