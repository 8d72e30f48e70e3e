import { expect, it } from "vitest";
import type { z } from "zod";
import { readAs } from "../../src/order/read.ts";
import { keptReadings } from "../../src/order/readings.ts";
import { shopFile } from "../../src/order/schema/shop.ts";
import { stringsFile } from "../../src/order/schema/strings.ts";

const text = "violin: []\nviola: []\ncello: []\n";

it("kept readings answer as a plain one does, by form, place and text", () => {
  const kept = keptReadings();
  const read = (schema: typeof stringsFile | typeof shopFile, from: string, file: string) =>
    kept.of(schema, from, file, () => readAs<z.ZodType>(schema, from, file));
  for (const [schema, from, file] of [
    [stringsFile, text, "a.yaml"],
    [shopFile, text, "a.yaml"],
    [stringsFile, text.replace("viola", "viol"), "a.yaml"],
    [stringsFile, text.replace("viola", "viol"), "b.yaml"],
  ] as const) {
    const plain = readAs(schema, from, file);
    for (const again of [read(schema, from, file), read(schema, from, file)]) {
      expect(again.ok).toBe(plain.ok);
      if (again.ok && plain.ok) expect(again.value.data).toEqual(plain.value.data);
      else expect(again).toEqual(plain);
    }
  }
  expect(read(stringsFile, text, "a.yaml")).toBe(read(stringsFile, text, "a.yaml"));
});
