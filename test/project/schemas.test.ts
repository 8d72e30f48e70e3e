import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { catalogue } from "../../src/order/catalogue.ts";
import { jsonSchemas } from "../../src/order/json-schema.ts";
import { top } from "../samples.ts";

const models = join(top, "models");
const samples = readdirSync(models, { recursive: true, encoding: "utf8" }).filter((name) =>
  name.endsWith(".yaml"),
);

/** Whether an independent validator accepts a sample by the schema that its first line names. */
function accepts(file: string, text: string): boolean {
  const [, path] = /^# yaml-language-server: \$schema=(\S+)/.exec(text) ?? [];
  if (path === undefined) throw new Error(`${file} names no schema`);
  const schema = JSON.parse(readFileSync(resolve(dirname(file), path), "utf8"));
  return new Ajv2020({ strict: false }).compile(schema)(parse(text)) as boolean;
}

type Schema = { readonly [key: string]: unknown } & {
  readonly $defs: Record<string, Schema>;
  readonly $ref?: string;
};

/** What an order's schema lists under set, wherever its definition stands. */
function setProperties(order: Schema): Record<string, { description?: string }> {
  const set = (order.properties as Record<string, Schema>).set!;
  const there = set.$ref === undefined ? set : order.$defs[set.$ref.split("/").at(-1)!]!;
  return there.properties as Record<string, { description?: string }>;
}

describe("the JSON Schemas", () => {
  it.each(Object.entries(jsonSchemas()))(
    "%s is shipped as it is generated (npm run schemas)",
    (name, schema) => {
      expect(JSON.parse(readFileSync(join(models, "schemas", `${name}.json`), "utf8"))).toEqual(schema);
    },
  );

  it("covers all samples", () => {
    expect(samples.length).toBeGreaterThan(10);
  });

  it.each(samples)("an editor's validator accepts %s", (name) => {
    const file = join(models, name);
    expect(accepts(file, readFileSync(file, "utf8"))).toBe(true);
  });

  it("describes every settable dimension in an order's set", () => {
    const properties = setProperties(jsonSchemas().order as Schema);
    expect(Object.keys(properties).sort()).toEqual(catalogue.map(({ id }) => id).sort());
    for (const { description } of Object.values(properties))
      expect(description?.length ?? 0).toBeGreaterThan(10);
  });

  it("refuses planted faults in an order", () => {
    const file = join(models, "orders", "SY-0417.yaml");
    const text = readFileSync(file, "utf8");
    for (const [from, to] of [
      ["hand: right", "hand: up"],
      ["strings: 5", "strings: 9"],
      ["  string.length:", "  string.lenght:"],
      ["326 mm", "326 furlongs"],
      ["frets: none", "colour: red"],
    ] as const) {
      expect(text).toContain(from);
      expect(accepts(file, text.replace(from, to)), to).toBe(false);
    }
  });
});
