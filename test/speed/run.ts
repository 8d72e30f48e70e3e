// Prints timings as ratios, measured in interleaved pairs in this one run: `npm run speed`, or `npm run speed -- --json`.
// A word (`commands`, `neck`, `strings`, `flat`, `solid`, `whole`) keeps it to one part.
import { commandRows } from "./commands.ts";
import { flatRows } from "./flat.ts";
import { neckRows } from "./neck.ts";
import type { Row } from "./row.ts";
import { solidRows } from "./solid.ts";
import { stringRows } from "./strings.ts";
import { wholeRows } from "./whole.ts";

const parts: { readonly [name: string]: () => Row[] | Promise<Row[]> } = {
  commands: commandRows,
  neck: neckRows,
  strings: stringRows,
  flat: flatRows,
  solid: solidRows,
  whole: wholeRows,
};
const asked = process.argv.slice(2).filter((word) => Object.hasOwn(parts, word));
const rows: Row[] = [];
for (const [name, measure] of Object.entries(parts)) {
  if (asked.length === 0 || asked.includes(name)) rows.push(...(await measure()));
}
if (process.argv.includes("--json")) {
  process.stdout.write(`${JSON.stringify(rows, undefined, 2)}\n`);
} else {
  const width = Math.max(...rows.map(({ name }) => name.length));
  for (const { name, median, unit, against, ratio } of rows) {
    process.stdout.write(
      `${name.padEnd(width)} ${median.toFixed(3).padStart(10)} ${unit.padEnd(9)} ${ratio.toFixed(2)} x ${against}\n`,
    );
  }
}
