import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { diskLibrary } from "../src/files/library.ts";
import type { Library } from "../src/order/library.ts";
import { keptReadings } from "../src/order/readings.ts";
import { type Options, resolve } from "../src/order/resolve.ts";
import type { Spec } from "../src/order/spec.ts";

/** The checkout's top folder. */
export const top = join(import.meta.dirname, "..");

/** The folder of sample orders. */
export const ordersFolder = join(top, "models", "orders");

/** The sample orders' files. */
export const orderFiles = readdirSync(ordersFolder)
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => join(ordersFolder, name));

/** The designs and their string counts. */
export const designs = { sedge: [4, 5, 6], mallow: [4, 5], thrift: [4, 5, 6, 7], bulrush: [4, 5] } as const;

/** Every design with every string count. */
export const everyCount = Object.entries(designs).flatMap(([design, counts]) =>
  counts.map((count) => ({ design, count })),
);

/** Of these, what takes long is tried with by day: each design once, and the most strings. By night all. */
export const someCounts = everyCount.filter(
  ({ count }) => process.env.NIGHTLY !== undefined || count === 5 || count === 7,
);

/** An order's text; `more` is added at its end. */
export function orderText(design: string, strings: number | string, more = "", hand = "right"): string {
  return `order: T-1\ndesign: ${design}\nstrings: ${strings}\nhand: ${hand}\nfrets: none\nshop: samphire\n${more}`;
}

const readings = keptReadings();

/** What an order's text resolves to, with the sample library. */
export function resolved(
  text: string,
  options: Options = {},
  own: { readonly designs?: Record<string, string>; readonly shops?: Record<string, string> } = {},
) {
  const disk = diskLibrary(join(ordersFolder, "order.yaml"));
  const library: Library = {
    ...disk,
    find: (shelf, name) => {
      const text = shelf === "designs" || shelf === "shops" ? own[shelf]?.[name] : undefined;
      return text === undefined
        ? disk.find(shelf, name)
        : { ok: true, value: { file: `${name}.yaml`, text } };
    },
  };
  return resolve(text, "order.yaml", library, options, readings);
}

/** The spec of a design at a count; throws where there is none, so that a test can't pass by accident. */
export function specOf(design: string, strings: number | string, more = "", options: Options = {}): Spec {
  const spec = resolved(orderText(design, strings, more), options);
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems, undefined, 1));
  return spec.value;
}

/** The spec of thrift with frets at a count of strings; throws where there is none. */
export function frettedSpec(strings: number | string, more = "", frets = 24, options: Options = {}): Spec {
  const text = orderText("thrift", strings, more).replace("frets: none", `frets: { count: ${frets} }`);
  const spec = resolved(text, options);
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems, undefined, 1));
  return spec.value;
}

/** A sample file's text. */
export function sampleText(...path: string[]): string {
  return readFileSync(join(top, "models", ...path), "utf8");
}
