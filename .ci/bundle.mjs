// Bundles the command line and the library into dist: one build, cut so that a command loads only what it needs.
import {
  chmodSync,
  copyFileSync,
  existsSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const top = dirname(dirname(fileURLToPath(import.meta.url)));
const dist = join(top, "dist");
if (existsSync(dist)) {
  for (const name of readdirSync(dist)) if (name.endsWith(".js")) rmSync(join(dist, name));
}
const { metafile } = await build({
  absWorkingDir: top,
  entryPoints: [
    ...["cli", "index"].map((name) => ({ in: `src/${name}.ts`, out: name })),
    // Beside the commands, which start it as a thread.
    { in: "src/pack/solids/solid-worker.ts", out: "solid-worker" },
  ],
  outdir: "dist",
  bundle: true,
  splitting: true,
  format: "esm",
  platform: "node",
  target: "node20",
  mainFields: ["module", "main"],
  alias: {
    "string-width": join(top, ".ci", "plain-width.mjs"),
    ...Object.fromEntries(
      ["fontkit", "linebreak", "png-js", "@noble/ciphers/aes"].map((name) => [
        name,
        join(top, ".ci", "no-fonts.mjs"),
      ]),
    ),
  },
  // Some libraries still ask for Node's own modules in the old way.
  banner: {
    js: 'import { createRequire as _require } from "node:module"; const require = _require(import.meta.url);',
  },
  chunkNames: "[name]-[hash]",
  legalComments: "none",
  metafile: true,
  logLevel: "warning",
});
// The solid kernel looks for its binary beside the file that it was bundled into.
copyFileSync(join(top, "node_modules", "manifold-3d", "manifold.wasm"), join(dist, "manifold.wasm"));
const cli = join(dist, "cli.js");
writeFileSync(cli, `#!/usr/bin/env node\n${readFileSync(cli, "utf8").replace(/^#!.*\n/, "")}`);
chmodSync(cli, 0o755);

// The licences of everything that the bundle holds.
const packages = new Set();
for (const input of Object.keys(metafile.inputs)) {
  // A package may bring one of its own inside it.
  const found = /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(input);
  if (found !== null) packages.add(found[0]);
}
const notices = [...packages].sort().map((path) => {
  const folder = join(top, path);
  const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  const text = file === undefined ? `Licence: ${license}` : readFileSync(join(folder, file), "utf8").trim();
  return `${name} ${version}\n${"-".repeat(`${name} ${version}`.length)}\n${text}\n`;
});
writeFileSync(join(dist, "THIRD-PARTY.txt"), `dist holds code of these packages.\n\n${notices.join("\n\n")}`);
