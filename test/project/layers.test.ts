import { readdirSync, readFileSync } from "node:fs";
import { isBuiltin } from "node:module";
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

/** Packages that each layer may import; every other may import none. */
const packages: Readonly<Record<string, readonly string[]>> = {
  geometry: ["flatbush", "manifold-3d", "@jscad/modeling"],
  step: ["@noble/hashes"],
  order: ["fastest-levenshtein", "yaml", "zod"],
  report: ["zod"],
  files: ["dxf-parser", "dxf-writer", "@jscad/modeling", "@jscad/stl-serializer", "fflate", "pdfkit"],
  commands: ["picocolors"],
};

/** Names of a clock, a process or of chance, that nothing above the line may reach for. */
const beyond = new Set([
  ...["process", "performance", "Buffer", "Date", "require", "globalThis", "global"],
  ...["setTimeout", "setInterval", "setImmediate"],
]);

type Node = { readonly type: string; readonly [key: string]: unknown };
const isNode = (x: unknown): x is Node => typeof x === "object" && x !== null && "type" in x;

/** Every node of a syntax tree but for plain names of members and keys, which reach for nothing. */
function nodesOf(node: Node): Node[] {
  const named = node.computed === true ? [] : ["property", "key"];
  const children = Object.entries(node).flatMap(([key, value]) =>
    named.includes(key) ? [] : [value].flat(),
  );
  return [node, ...children.filter(isNode).flatMap(nodesOf)];
}

function treeOf({ path, text }: Source): Node[] {
  const { program, errors } = parseSync(path, text);
  expect(errors, path).toEqual([]);
  return nodesOf(program as unknown as Node);
}

const importing = [
  ...["ImportDeclaration", "ExportNamedDeclaration", "ExportAllDeclaration"],
  ...["ImportExpression", "TSImportType"],
];

/** What a file imports, written, at run time or for a type; what is worked out when it runs is `?`. */
function importsOf(source: Source): string[] {
  return treeOf(source)
    .filter(({ type, source }) => importing.includes(type) && source !== null && source !== undefined)
    .map(({ source }) => (isNode(source) && typeof source.value === "string" ? source.value : "?"));
}

/** What a file reaches for without an import. */
function reachesOf(source: Source): string[] {
  return treeOf(source).flatMap((node): string[] => {
    if (node.type === "Identifier" && beyond.has(String(node.name))) return [String(node.name)];
    if (node.type !== "MemberExpression") return [];
    const { object, property } = node as Node & { object: Node; property: Node };
    return object.name === "Math" && [property.name, property.value].includes("random")
      ? ["Math.random"]
      : [];
  });
}

const packageOf = (name: string) => /^(@[^/]+\/)?[^/]*/.exec(name)![0];

function importFault(name: string, layer: string, path: string): boolean {
  if (isBuiltin(name)) return belowTheLine.includes(layer);
  if (!name.startsWith(".")) return !(packages[layer] ?? []).includes(packageOf(name));
  const target = relative(src, resolve(dirname(path), name)).split("/");
  const other = target.length > 1 ? layers.indexOf(target[0]!) : -1;
  return other === -1 || other > layers.indexOf(layer);
}

/** Imports against the order of the layers, and anything of Node, a clock or a process above the line. */
function faults(source: Source): string[] {
  const here = relative(src, source.path);
  const layer = here.split("/").length > 1 ? here.split("/")[0]! : "top";
  if (layer === "top") return [];
  if (!layers.includes(layer)) return [`${here} is in no layer`];
  return [
    ...importsOf(source)
      .filter((name) => importFault(name, layer, source.path))
      .map((name) => `${here} imports ${name}`),
    ...(belowTheLine.includes(layer) ? reachesOf(source) : []).map((name) => `${here} reaches for ${name}`),
  ];
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

  const at = (layer: string, text: string) => faults({ path: join(src, layer, "planted.ts"), text });

  it.each([
    ["geometry", 'import { checks } from "../checks/checks.ts";', "imports ../checks/checks.ts"],
    ["order", 'export { packOf } from "../pack/pack.ts";', "imports ../pack/pack.ts"],
    ["order", 'export * from "../pack/pack.ts";', "imports ../pack/pack.ts"],
    ["step", 'export const later = () => import("../order/spec.ts");', "imports ../order/spec.ts"],
    ["step", "export const later = (x: string) => import(x);", "imports ?"],
    ["step", 'export type Later = import("../order/spec.ts").Spec;', "imports ../order/spec.ts"],
    ["geometry", 'export * from "../index.ts";', "imports ../index.ts"],
    ["order", 'import "../cli.ts";', "imports ../cli.ts"],
    ["commands", 'import "../cli.ts";', "imports ../cli.ts"],
    ["geometry", 'import { top } from "../../test/samples.ts";', "imports ../../test/samples.ts"],
    ["geometry", 'import "../helpers/x.ts";', "imports ../helpers/x.ts"],
    ["report", 'import { readFileSync } from "node:fs";', "imports node:fs"],
    ["report", 'import { readFileSync } from "fs";', "imports fs"],
    ["report", 'import { readFile } from "fs/promises";', "imports fs/promises"],
    ["geometry", 'import { parse } from "yaml";', "imports yaml"],
    ["geometry", 'import { z } from "@jscad/stl-serializer";', "imports @jscad/stl-serializer"],
    ["drawing", 'import makerjs from "makerjs";', "imports makerjs"],
    ["drawing", 'export const x = globalThis["process"];', "reaches for globalThis"],
    ["drawing", "export const x = process.env;", "reaches for process"],
    ["drawing", "const { env } = process;", "reaches for process"],
    ["drawing", "export const x = { process };", "reaches for process"],
    ["drawing", "export const x = performance.now();", "reaches for performance"],
    ["drawing", "export const x = Buffer.from([]);", "reaches for Buffer"],
    ["drawing", "export const today = new Date();", "reaches for Date"],
    ["drawing", 'export const x = require("yaml");', "reaches for require"],
    ["drawing", "setTimeout(() => 1, 10);", "reaches for setTimeout"],
    ["drawing", "setInterval(() => 1, 10);", "reaches for setInterval"],
    ["drawing", "export const x = Math.random();", "reaches for Math.random"],
    ["drawing", 'export const x = Math["random"];', "reaches for Math.random"],
    ["helpers", "export const x = 1;", "is in no layer"],
  ])("finds what is planted in %s: %s", (layer, text, fault) => {
    expect(at(layer, text)).toEqual([`${layer}/planted.ts ${fault}`]);
  });

  it.each([
    ["pack", 'import { readFileSync } from "node:fs"; export const x = process.pid;'],
    ["report", 'import { z } from "zod/v4";'],
    ["drawing", 'export const x = { process: 1, note: "the Date" }.process; // a Date, a process.'],
    ["drawing", 'import { spec } from "../order/spec.ts"; export { spec };'],
  ])("lets be what may stand in %s: %s", (layer, text) => {
    expect(at(layer, text)).toEqual([]);
  });

  it("keeps every file to 250 lines", () => {
    const long = sources
      .filter(({ text }) => text.split("\n").length > 251)
      .map(({ path }) => relative(src, path));
    expect(long).toEqual([]);
  });
});
