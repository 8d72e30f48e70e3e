/** The kinds of number that a person writes, each kept in one unit. */
export type Kind =
  | "length"
  | "angle"
  | "force"
  | "frequency"
  | "mass-per-length"
  | "stress"
  | "mass"
  | "density"
  | "number"
  | "count";

/** What each kind is kept in, and the unit words that a person may write after the number with their factor. */
export const kinds: {
  readonly [kind in Kind]: { readonly unit: string; readonly words: { readonly [word: string]: number } };
} = {
  length: { unit: "mm", words: { mm: 1, cm: 10, m: 1000, in: 25.4, inch: 25.4, '"': 25.4 } },
  angle: { unit: "deg", words: { deg: 1, "°": 1, degrees: 1 } },
  force: { unit: "N", words: { N: 1, lbf: 4.4482216152605 } },
  frequency: { unit: "Hz", words: { Hz: 1 } },
  "mass-per-length": {
    unit: "g/m",
    words: { "g/m": 1, "kg/m": 1000, "lb/in": 17857.9673, "mg/m": 0.001 },
  },
  stress: { unit: "MPa", words: { MPa: 1, GPa: 1000 } },
  mass: { unit: "g", words: { g: 1, kg: 1000, oz: 28.349523125 } },
  density: { unit: "kg/m3", words: { "kg/m3": 1, "g/cm3": 1000 } },
  number: { unit: "", words: {} },
  count: { unit: "", words: {} },
};

/** A number read, or what is wrong with the text. `code` says whether the number or its unit is at fault. */
export type Read =
  | { readonly ok: true; readonly value: number }
  | {
      readonly ok: false;
      readonly code: "type" | "unit" | "range";
      readonly allowed: string;
      readonly hint: string;
    };

const forms: { readonly [kind in Kind]: string } = {
  length: "a length such as 328, 328 mm, 12.9 in, 1/2 in or 1 1/16 in",
  angle: "an angle such as 12, 12 deg or 12° 30'",
  force: "a force such as 75 or 75 N",
  frequency: "a frequency such as 440 or 442 Hz",
  "mass-per-length": "a mass per length such as 0.66 or 0.66 g/m",
  stress: "a stress such as 2600 MPa or 2.6 GPa",
  mass: "a mass such as 30 g or 0.5 kg",
  density: "a density such as 705 kg/m3 or 0.7 g/cm3",
  number: "a number such as 5, 0.62 or 1/6",
  count: "a whole number such as 2",
};

const decimal = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/;
const fraction = /^([+-]?)(?:(\d+)\s+)?(\d+)\s*\/\s*(\d+)$/;
const sexagesimal = /^([+-]?)(\d+)\s*(?:°|deg)\s*(\d+(?:\.\d+)?)\s*['′](?:\s*(\d+(?:\.\d+)?)\s*(?:"|″))?$/;
const numberForm = String.raw`[+-]?(?:(?:\d+\s+)?\d+\s*/\s*\d+|(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?)`;
const withUnit = new RegExp(String.raw`^(${numberForm})\s*([^\d\s.,+/-]\S*)?$`);

/**
 * Read a number with its unit as a person writes it.
 *
 * Lengths come back in mm, angles in degrees, forces in N, mass per length in g/m, stress in MPa. A number without a unit
 * is in that unit already, but a fraction of a length wants one. Decimals take a point; NaN and the infinities, which have
 * no digits, and numbers too large to be held are refused.
 */
export function readQuantity(text: string, kind: Kind): Read {
  const written = text.trim();
  if (kind === "angle") {
    const value = readSexagesimal(written);
    if (value !== undefined) return { ok: true, value };
  }
  const [, number, word] = withUnit.exec(written) ?? [];
  if (number === undefined) return refusal("type", kind, written);
  const factor = word === undefined ? 1 : kinds[kind].words[word];
  if (factor === undefined || (word !== undefined && !Object.hasOwn(kinds[kind].words, word))) {
    return refusal("unit", kind, written);
  }
  const value = readNumber(number.trim());
  if (value === undefined) return refusal("type", kind, written);
  if (kind === "count" && !Number.isInteger(value)) return refusal("type", kind, written);
  if (word === undefined && kind === "length" && number.includes("/")) {
    return { ...refusal("unit", kind, written), hint: `say which: ${number} in, or ${number} mm` };
  }
  if (!Number.isFinite(value))
    return { ...refusal("range", kind, written), hint: "write a number of sensible size" };
  return { ok: true, value: value * factor + 0 };
}

function readNumber(text: string): number | undefined {
  if (decimal.test(text)) return Number(text);
  const [, sign, whole, above, below] = fraction.exec(text) ?? [];
  if (above === undefined || Number(below) === 0) return undefined;
  const size = Number(whole ?? 0) + Number(above) / Number(below);
  return sign === "-" ? -size : size;
}

function readSexagesimal(text: string): number | undefined {
  const [, sign, degrees, minutes, seconds] = sexagesimal.exec(text) ?? [];
  if (degrees === undefined || Number(minutes) >= 60 || Number(seconds ?? 0) >= 60) return undefined;
  const size = Number(degrees) + Number(minutes) / 60 + Number(seconds ?? 0) / 3600;
  return sign === "-" ? -size : size;
}

function refusal(code: "type" | "unit" | "range", kind: Kind, text: string): Extract<Read, { ok: false }> {
  return { ok: false, code, allowed: forms[kind], hint: hintFor(text, kind) };
}

function hintFor(text: string, kind: Kind): string {
  if (/^[+-]?\d+,\d+/.test(text)) return "write a decimal point, not a comma";
  if (/\/\s*0+\b/.test(text)) return "a fraction can't have 0 below the line";
  const words = Object.keys(kinds[kind].words);
  return words.length === 0 ? "write the number alone" : `units read here: ${words.join(", ")}`;
}

/** A number of some kind as it is written in messages: at most six decimals, with its unit. */
export function quantityText(value: number, kind: Kind): string {
  const number = String(Math.round(value * 1e6) / 1e6);
  const { unit } = kinds[kind];
  return unit === "" ? number : `${number} ${unit}`;
}
