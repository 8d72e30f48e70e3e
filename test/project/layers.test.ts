import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { parseSync } from "oxc-parser";
import { describe, expect, it } from "vitest";
import { top } from "../samples.ts";

const layers = [
  ...[
    "geometry",
    "step",
    "order",
    "instrument",
    "physics",
    "workshop",
    "rack",
    "checks",
    "drawing",
    "report",
  ],
  ...["solve", "files", "pack", "desk", "commands"],
];
const belowTheLine = layers.slice(0, layers.indexOf("files"));

type Source = { readonly path: string; readonly text: string };

const src = join(top, "src");
const sources: Source[] = readdirSync(src, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts") && !name.endsWith(".d.ts"))
  .map((name) => ({ path: join(src, name), text: readFileSync(join(src, name), "utf8") }));

/** What a file imports, written or at run time. */
function importsOf({ path, text }: Source): string[] {
  const { module, program } = parseSync(path, text);
  const dynamic = [...JSON.stringify(program).matchAll(/"type":"ImportExpression".*?"value":"([^"]+)"/g)];
  return [
    ...module.staticImports.map(({ moduleRequest }) => moduleRequest.value),
    ...module.staticExports.flatMap(({ entries }) =>
      entries.flatMap(({ moduleRequest }) => moduleRequest?.value ?? []),
    ),
    ...dynamic.map(([, name]) => name!),
  ];
}

/** Imports against the order of the layers, and anything of Node, a clock or a process above the line. */
function faults(source: Source): string[] {
  const here = relative(src, source.path);
  const layer = here.split("/").length > 1 ? here.split("/")[0]! : "top";
  if (layer === "top") return [];
  if (!layers.includes(layer)) return [`${here} is in no layer`];
  const found = importsOf(source).flatMap((name): string[] => {
    if (name.startsWith("node:")) return belowTheLine.includes(layer) ? [`${here} imports ${name}`] : [];
    if (!name.startsWith(".")) return [];
    const other = relative(src, resolve(dirname(source.path), name)).split("/")[0]!;
    return layers.indexOf(other) > layers.indexOf(layer) ? [`${here} imports ${name}`] : [];
  });
  const reached = belowTheLine.includes(layer)
    ? [...source.text.matchAll(/\b(process|performance|Buffer)\.|\bDate\b|\brequire\(|Math\.random/g)]
    : [];
  return [...found, ...reached.map(([what]) => `${here} reaches for ${what}`)];
}

describe("the layers", () => {
  it("holds sources of most layers, so that the rule is tried", () => {
    expect(sources.length).toBeGreaterThan(60);
    expect(sources.flatMap(importsOf).filter((name) => name.startsWith(".")).length).toBeGreaterThan(150);
  });

  it.each(sources.map((source) => ({ name: relative(src, source.path), source })))(
    "$name keeps to them",
    ({ source }) => {
      expect(faults(source)).toEqual([]);
    },
  );

  it("finds a planted crossing, a planted node: import, a re-export and a lazy import", () => {
    const at = (layer: string, text: string) => faults({ path: join(src, layer, "planted.ts"), text });
    expect(at("geometry", 'import { checks } from "../checks/checks.ts";')).toHaveLength(1);
    expect(at("order", 'export { packOf } from "../pack/pack.ts";')).toHaveLength(1);
    expect(at("report", 'import { readFileSync } from "node:fs";')).toHaveLength(1);
    expect(at("step", 'export const later = () => import("../order/spec.ts");')).toHaveLength(1);
    expect(at("drawing", "export const today = new Date();")).toHaveLength(1);
    expect(at("helpers", "export const x = 1;")).toHaveLength(1);
    expect(at("pack", 'import { readFileSync } from "node:fs";')).toEqual([]);
  });

  it("keeps every file to 250 lines", () => {
    const long = sources
      .filter(({ text }) => text.split("\n").length > 251)
      .map(({ path }) => relative(src, path));
    expect(long).toEqual([]);
  });
});
