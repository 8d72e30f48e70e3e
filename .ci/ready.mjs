// Makes the checkout ready: installs what package-lock.json names and builds, each only when something it rests on changed.
// Usage: node .ci/ready.mjs [--quiet] [bundle] [types]
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const top = dirname(dirname(fileURLToPath(import.meta.url)));
const asked = process.argv.slice(2);
const say = (text) => asked.includes("--quiet") || process.stderr.write(`${text}\n`);
const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  process.stderr.write(`Node ${process.versions.node} is too old: 20.19 or newer is needed\n`);
  process.exit(1);
}

/** A hash over the text of files and of all files in folders. */
function hashOver(paths) {
  const hash = createHash("sha256");
  const take = (path) => {
    if (!existsSync(path)) return;
    if (statSync(path).isDirectory()) for (const name of readdirSync(path).sort()) take(join(path, name));
    else hash.update(path.slice(top.length)).update("\0").update(readFileSync(path)).update("\0");
  };
  for (const path of paths) take(join(top, path));
  return hash.digest("hex");
}

/** Do some work unless its stamp says that nothing it rests on has changed since. */
function once(stamp, key, what, work) {
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === key) return;
  say(what);
  work();
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, key);
}

const node = (...args) => execFileSync(process.execPath, args, { cwd: top, stdio: ["ignore", 2, 2] });

const lock = hashOver(["package-lock.json"]);
once(join(top, "node_modules", ".installed"), lock, "installing what package-lock.json names", () => {
  const npm = process.env.npm_execpath;
  const args = ["ci", "--ignore-scripts", "--no-audit", "--no-fund", "--loglevel=error"];
  if (npm !== undefined) node(npm, ...args);
  else execFileSync("npm", args, { cwd: top, stdio: ["ignore", 2, 2], shell: process.platform === "win32" });
});

const sources = ["src", "package.json", "package-lock.json", "tsconfig.json", "tsconfig.types.json", ".ci"];
if (asked.includes("bundle")) {
  once(join(top, "dist", ".bundle"), hashOver(sources), "building dist", () =>
    node(join(top, ".ci", "bundle.mjs")),
  );
}
if (asked.includes("types")) {
  once(join(top, "dist", ".types"), hashOver(sources), "building the types", () => {
    node(join(top, "node_modules", "typescript", "bin", "tsc"), "-p", "tsconfig.types.json");
  });
}
