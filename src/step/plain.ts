import { rounded } from "./rounded.ts";

/**
 * A frozen copy of plain data (numbers, words, truth values, null, and lists and records of these) with its numbers rounded to 1e-6 and its keys in order, and the text that stands for it.
 *
 * A key whose value is undefined is left out. Anything but plain data (a function, a class instance, a symbol) throws a
 * TypeError that says where it stood: it could hide a dependency from the step's key.
 */
export function plainCopy(value: unknown, where = "input"): { value: unknown; text: string } {
  if (typeof value === "number") {
    const number = rounded(value);
    return { value: number, text: String(number) };
  }
  if (value === null || typeof value === "string" || typeof value === "boolean") {
    return { value, text: JSON.stringify(value) };
  }
  if (Array.isArray(value)) return list(value, where);
  if (typeof value === "object" && isRecord(value)) return record(value, where);
  throw new TypeError(
    `${where} is no plain data but ${typeof value === "object" ? "an instance" : typeof value}`,
  );
}

function isRecord(value: object): value is Record<string, unknown> {
  const prototype = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}

function list(values: readonly unknown[], where: string) {
  const copies = values.map((item, i) => plainCopy(item, `${where}[${i}]`));
  return {
    value: Object.freeze(copies.map((copy) => copy.value)),
    text: `[${copies.map((copy) => copy.text).join(",")}]`,
  };
}

function record(values: Record<string, unknown>, where: string) {
  const copy: Record<string, unknown> = {};
  const texts: string[] = [];
  for (const key of Object.keys(values).sort()) {
    const item = values[key];
    if (item === undefined) continue;
    const { value, text } = plainCopy(item, `${where}.${key}`);
    Object.defineProperty(copy, key, { value, enumerable: true });
    texts.push(`${JSON.stringify(key)}:${text}`);
  }
  return { value: Object.freeze(copy), text: `{${texts.join(",")}}` };
}
