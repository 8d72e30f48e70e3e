import { rounded } from "./rounded.ts";

/** A frozen copy of plain data, and the text that stands for it. `fixed` says that what was copied is frozen all through itself, so that it stands for the same ever after. */
type Plain = { readonly value: unknown; readonly text: string; readonly fixed: boolean };

/** Copies of data that can't change any more, by what was copied, and how the names of records are written. */
export type Copies = { readonly known: WeakMap<object, Plain>; readonly names: Map<string, string> };

/** Nothing is known as yet. */
export function noCopies(): Copies {
  return { known: new WeakMap(), names: new Map() };
}

/**
 * A frozen copy of plain data (numbers, words, truth values, null, and lists and records of these) with its numbers rounded to 1e-6 and its keys in order, and the text that stands for it.
 *
 * A key whose value is undefined is left out. Anything but plain data (a function, a class instance, a symbol) throws a
 * TypeError that says where it stood: it could hide a dependency from the step's key. What `copies` knows isn't copied again.
 */
export function plainCopy(
  value: unknown,
  copies: Copies = noCopies(),
): { readonly value: unknown; readonly text: string } {
  try {
    return copied(value, copies);
  } catch (error) {
    // Where it stood is looked up only then: to keep the way there at hand would cost more than the copy.
    if (error instanceof NotPlain)
      throw new TypeError(`${foundAt(value, error.culprit)} is no plain data but ${error.kind}`);
    throw error;
  }
}

/** What stands in plain data without being any. */
class NotPlain extends Error {
  readonly culprit: unknown;
  readonly kind: string;
  constructor(culprit: unknown, kind: string) {
    super();
    this.culprit = culprit;
    this.kind = kind;
  }
}

function copied(value: unknown, copies: Copies): Plain {
  if (typeof value === "number") {
    const number = rounded(value);
    return { value: number, text: String(number), fixed: true };
  }
  if (value === null || typeof value === "string" || typeof value === "boolean") {
    return { value, text: JSON.stringify(value), fixed: true };
  }
  if (typeof value !== "object") throw new NotPlain(value, typeof value);
  const known = copies.known.get(value);
  if (known !== undefined) return known;
  if (!Array.isArray(value) && !isRecord(value)) throw new NotPlain(value, "an instance");
  const plain = Array.isArray(value) ? list(value, copies) : record(value, copies);
  if (plain.fixed && plain.text.length > worthKeeping) copies.known.set(value, plain);
  return plain;
}

/** Copying less than so much text costs no more than to look it up. */
const worthKeeping = 200;

function isRecord(value: object): value is Record<string, unknown> {
  const prototype = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}

function list(values: readonly unknown[], copies: Copies): Plain {
  const copy: unknown[] = [];
  let text = "[";
  let fixed = Object.isFrozen(values);
  for (let i = 0; i < values.length; i++) {
    const item = copied(values[i], copies);
    copy.push(item.value);
    text += i === 0 ? item.text : `,${item.text}`;
    fixed &&= item.fixed;
  }
  return { value: Object.freeze(copy), text: `${text}]`, fixed };
}

function record(values: Record<string, unknown>, copies: Copies): Plain {
  const copy: Record<string, unknown> = {};
  let text = "{";
  let fixed = Object.isFrozen(values);
  for (const key of Object.keys(values).sort()) {
    const item = values[key];
    if (item === undefined) continue;
    const its = copied(item, copies);
    fixed &&= its.fixed;
    // The one name that an assignment would take for something else.
    if (key === "__proto__") Object.defineProperty(copy, key, { value: its.value, enumerable: true });
    else copy[key] = its.value;
    text += (text.length === 1 ? "" : ",") + written(key, copies.names) + its.text;
  }
  return { value: Object.freeze(copy), text: `${text}}`, fixed };
}

function written(name: string, names: Copies["names"]): string {
  let text = names.get(name);
  if (text === undefined) {
    text = `${JSON.stringify(name)}:`;
    names.set(name, text);
  }
  return text;
}

/** The way to something that stands in data. */
function foundAt(value: unknown, culprit: unknown, where = "input"): string | undefined {
  if (Object.is(value, culprit)) return where;
  if (Array.isArray(value))
    return first(
      value.map((item, i) => [item, `${where}[${i}]`]),
      culprit,
    );
  if (typeof value !== "object" || value === null || !isRecord(value)) return undefined;
  return first(
    Object.keys(value)
      .sort()
      .map((key) => [value[key], `${where}.${key}`]),
    culprit,
  );
}

function first(items: readonly (readonly [unknown, string])[], culprit: unknown): string | undefined {
  for (const [item, where] of items) {
    const found = foundAt(item, culprit, where);
    if (found !== undefined) return found;
  }
  return undefined;
}
