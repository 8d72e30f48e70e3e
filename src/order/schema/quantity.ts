import { z } from "zod";
import { type Kind, readQuantity } from "../quantity.ts";

/** What an editor may hold a written quantity against; the exact reading is readQuantity's. */
const patterns: { readonly [kind in Kind]: string } = {
  length: '^\\s*[+-]?[0-9./ eE+-]+\\s*(mm|cm|m|in|inch|")?\\s*$',
  angle: "^\\s*[+-]?[0-9.eE+-]+\\s*(deg|°|degrees)?(\\s*[0-9.]+\\s*['′])?(\\s*[0-9.]+\\s*[\"″])?\\s*$",
  force: "^\\s*[0-9.eE+-]+\\s*(N|lbf)?\\s*$",
  frequency: "^\\s*[0-9.eE+-]+\\s*(Hz)?\\s*$",
  "mass-per-length": "^\\s*[0-9.eE+-]+\\s*(g/m|kg/m|lb/in|mg/m)?\\s*$",
  stress: "^\\s*[0-9.eE+-]+\\s*(MPa|GPa)?\\s*$",
  mass: "^\\s*[0-9.eE+-]+\\s*(g|kg|oz)?\\s*$",
  density: "^\\s*[0-9.eE+-]+\\s*(kg/m3|g/cm3)?\\s*$",
  number: "^\\s*[+-]?[0-9./ eE+-]+\\s*$",
  count: "^\\s*[0-9]+\\s*$",
};

/** A quantity of some kind, written as a number or a text with a unit; comes out as a number in the kind's unit. */
export function quantity(kind: Kind, about = "") {
  return scalar(about === "" ? {} : { description: about }, patterns[kind]).transform((written, context) => {
    const read = readQuantity(String(written), kind);
    if (read.ok) return read.value;
    const { code, allowed, hint } = read;
    context.issues.push({
      code: "custom",
      input: written,
      message: allowed,
      params: { code, allowed, hint },
    });
    return z.NEVER;
  });
}

/** A quantity kept as it was written, for a place where its kind is known only later. */
export function writtenQuantity(about: string) {
  return scalar({ description: about }, undefined).transform(String);
}

function scalar(meta: { description?: string }, pattern: string | undefined) {
  const text = pattern === undefined ? z.string() : z.string().meta({ pattern });
  return z.union([text, z.number()], { error: "a number or a text" }).meta(meta);
}

/** A whole number from `least` to `most`, both included. */
export function wholeNumber(least: number, most: number, about: string) {
  const allowed = `a whole number from ${least} to ${most}`;
  const text = z.string().meta({ pattern: "^[0-9]+$" });
  return z
    .union([text, z.int().min(least).max(most)], { error: allowed })
    .meta({ description: about })
    .transform((written, context) => {
      const value = /^\d+$/.test(String(written)) ? Number(written) : Number.NaN;
      if (value >= least && value <= most) return value;
      context.issues.push({
        code: "custom",
        input: written,
        message: allowed,
        params: { code: "count", allowed },
      });
      return z.NEVER;
    });
}
