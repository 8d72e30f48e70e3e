import type { z } from "zod";
import { didYouMean } from "./nearest.ts";
import { semitonesFromA4 } from "./pitch.ts";
import { type Checked, type Position, type Problem, quoted } from "./problem.ts";
import type { OrderFile } from "./schema/order.ts";
import type { ownString, StringsFile } from "./schema/strings.ts";
import type { SpecString } from "./spec.ts";

type Asked = { readonly string: string | z.output<typeof ownString>; readonly position: Position };

/**
 * The strings of one instrument, highest first: each of the voice's own strings by its name, or as the order describes it.
 *
 * Unknown names, texts that are no pitch, the same name twice, and a list that doesn't fall in pitch are problems.
 */
export function resolveStrings(asked: readonly Asked[], known: StringsFile["violin"]): Checked<SpecString[]> {
  const problems: Problem[] = [];
  const strings: SpecString[] = [];
  for (const { string, position } of asked) {
    const own = typeof string === "string" ? { name: string } : string;
    const found = resolveOne(own, position, known);
    if (!found.ok) {
      problems.push(...found.problems);
      continue;
    }
    const above = strings.at(-1);
    if (strings.some(({ name }) => name === own.name)) {
      problems.push(outOfOrder(position, own.name, "a name that stands twice", "each string once"));
    } else if (above !== undefined && above.semitones <= found.value.semitones) {
      const what = `${own.name} after ${above.name}, which is not higher`;
      problems.push(outOfOrder(position, own.name, what, "strings from the highest to the lowest"));
    }
    strings.push(found.value);
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: strings };
}

function outOfOrder(position: Position, name: string, found: string, allowed: string): Problem {
  const hint = "write the highest string first, each once";
  return { code: "order-of-strings", position, name: `strings.${name}`, found, allowed, hint };
}

function resolveOne(
  own: z.output<typeof ownString>,
  position: Position,
  known: StringsFile["violin"],
): Checked<SpecString> {
  const stock = known.find(({ name }) => name === own.name);
  const names = known.map(({ name }) => name);
  const at = { position, name: `strings.${own.name}` };
  if (
    stock === undefined &&
    (own.pitch === undefined || own.diameter === undefined || own.mass === undefined)
  ) {
    const hint = didYouMean(own.name, names, "or describe it: { name, pitch, diameter, mass }");
    const allowed = names.join(", ");
    return { ok: false, problems: [{ code: "unknown-name", ...at, found: quoted(own.name), allowed, hint }] };
  }
  const pitch = own.pitch ?? stock?.pitch ?? "";
  const semitones = semitonesFromA4(pitch);
  if (semitones === undefined) {
    const allowed = "a pitch such as A4, C#4 or Bb1";
    return {
      ok: false,
      problems: [{ code: "type", ...at, found: quoted(pitch), allowed, hint: "letter, # or b, octave" }],
    };
  }
  const size = checkedSize(own, at);
  if (size !== undefined) return { ok: false, problems: [size] };
  return {
    ok: true,
    value: {
      name: own.name,
      semitones,
      diameter: own.diameter ?? stock?.diameter.is ?? 0,
      mass: own.mass ?? stock?.mass.is ?? 0,
      strength: own.mass === undefined ? (stock?.strength?.is ?? null) : null,
      marks: {
        diameter: own.diameter === undefined ? (stock?.diameter.mark ?? "") : "M",
        mass: own.mass === undefined ? (stock?.mass.mark ?? "") : "M",
      },
    },
  };
}

/** A string of another order of magnitude is likely written in another unit. */
function checkedSize(
  own: z.output<typeof ownString>,
  at: Pick<Problem, "position" | "name">,
): Problem | undefined {
  const { diameter = 1, mass = 1 } = own;
  if (!(diameter >= 0.1 && diameter <= 5)) {
    return {
      code: "range",
      ...at,
      found: `a diameter of ${diameter} mm`,
      allowed: "0.1 mm to 5 mm",
      hint: "is it in mm?",
    };
  }
  if (!(mass >= 0.1 && mass <= 100)) {
    return {
      code: "range",
      ...at,
      found: `${mass} g/m`,
      allowed: "0.1 g/m to 100 g/m",
      hint: "is it in g/m?",
    };
  }
  return undefined;
}

/** The strings that an order asks for: its own list, or the design's for that count. */
export function askedStrings(
  strings: OrderFile["strings"],
  ofDesign: readonly string[],
  at: (index?: number) => Position,
): Asked[] {
  if (typeof strings === "number") return ofDesign.map((string) => ({ string, position: at() }));
  return strings.map((string, i) => ({ string, position: at(i) }));
}
