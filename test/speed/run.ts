// Prints timings as ratios, measured in interleaved pairs in this one run: `npm run speed`, or `npm run speed -- --json`.
import { commandRows } from "./commands.ts";

const rows = [...commandRows()];
if (process.argv.includes("--json")) {
  process.stdout.write(`${JSON.stringify(rows, undefined, 2)}\n`);
} else {
  for (const { name, median, unit, against, ratio } of rows) {
    process.stdout.write(
      `${name.padEnd(34)} ${median.toFixed(3).padStart(10)} ${unit}  ${ratio.toFixed(2)} x ${against}\n`,
    );
  }
}
