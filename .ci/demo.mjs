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
  out/SY-0417/dimensions.md               every number of a five-string violin, and what the checks say
  out/SY-0417/outlines/fingerboard.svg    its fingerboard as a picture; fingerboard.dxf beside it is for the machine
  out/SY-0422/outlines/bridge.svg         the bridge of a seven-string violin, with its notches
Then change a number:
  node dist/cli.js make models/orders/SY-0417.yaml --strings 6
  node dist/cli.js compare out/SY-0417 out/SY-0417~*
`);
}
process.exitCode = status ?? 3;
