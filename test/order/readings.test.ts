import { expect, it } from "vitest";
import { readAs } from "../../src/order/read.ts";
import { keptReadings } from "../../src/order/readings.ts";
import { shopFile } from "../../src/order/schema/shop.ts";
import { stringsFile } from "../../src/order/schema/strings.ts";

const text = "violin: []\nviola: []\ncello: []\n";

it("kept readings answer as a plain one does, by form, place and text", () => {
  const read = keptReadings();
  for (const [schema, from, file] of [
    [stringsFile, text, "a.yaml"],
    [shopFile, text, "a.yaml"],
    [stringsFile, text.replace("viola", "viol"), "a.yaml"],
    [stringsFile, text.replace("viola", "viol"), "b.yaml"],
  ] as const) {
    const plain = readAs(schema, from, file);
    for (const kept of [read(schema, from, file), read(schema, from, file)]) {
      expect(kept.ok).toBe(plain.ok);
      if (kept.ok && plain.ok) expect(kept.value.data).toEqual(plain.value.data);
      else expect(kept).toEqual(plain);
    }
  }
  expect(read(stringsFile, text, "a.yaml")).toBe(read(stringsFile, text, "a.yaml"));
});
