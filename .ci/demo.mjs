// Makes the packs of all sample orders, and says where they are and what to look at first.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const top = dirname(dirname(fileURLToPath(import.meta.url)));
const orders = readdirSync(join(top, "models", "orders"))
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => join("models", "orders", name));
const { status } = spawnSync(process.execPath, [join("dist", "cli.js"), "make", ...orders, "--out", "out"], {
  cwd: top,
  stdio: "inherit",
});
if (status === 0) {
  process.stdout.write(`
The packs of ${orders.length} sample orders are in out/. Look first at
  out/SY-0417/index.html                          all of a five-string violin's pack: open it in a browser
  out/SY-0417/bench/traveller.pdf                 what goes with the work: parts, cut list, what is bought, sequence of work
  out/SY-0417/bench/set-up-wing-bass-router.pdf   a set-up's sheet: the work in its fixture, settings, passes, cautions
  out/SY-0417/fixtures/neck-shaper.svg            the fixture of its neck; neck-shaper.dxf beside it is for the machine
  out/SY-0417/bench/neck-sheet.svg                its neck with dimensions, tolerances and sections
  out/SY-0422/bench/assembly.svg                  a seven-string violin put together, in three views and from the player's side
  out/SY-0417/dimensions.md                       every number, and what the checks say
Then change a number:
  node dist/cli.js make models/orders/SY-0417.yaml --strings 6
  node dist/cli.js compare out/SY-0417 out/SY-0417~*
`);
}
process.exitCode = status ?? 3;
