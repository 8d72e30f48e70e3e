import type { z } from "zod";
import { didYouMean } from "./nearest.ts";
import { semitonesFromA4 } from "./pitch.ts";
import { type Checked, type Position, type Problem, quoted } from "./problem.ts";
import type { OrderFile } from "./schema/order.ts";
import type { ownString, StringsFile } from "./schema/strings.ts";
import type { SpecString } from "./spec.ts";
import { likelyDensity, likelyUnit, massFromTension, meanDensity } from "./string-mass.ts";

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
    (own.pitch === undefined ||
      own.diameter === undefined ||
      (own.mass === undefined && own.tension === undefined))
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
  const { diameter = stock?.diameter.is ?? 0 } = own;
  const mass = massOf(own, stock, semitones);
  const from = own.mass === undefined && own.tension !== undefined ? "tension" : "mass";
  const size = checkedSize(diameter, mass, from, at);
  if (size !== undefined) return { ok: false, problems: [size] };
  const weighed = own.mass === undefined && own.tension === undefined;
  return {
    ok: true,
    value: {
      ...{ name: own.name, semitones, diameter, mass },
      strength: weighed ? (stock?.strength?.is ?? null) : null,
      marks: {
        diameter: own.diameter === undefined ? (stock?.diameter.mark ?? "") : "M",
        mass: weighed ? (stock?.mass?.mark ?? stock?.tension?.mark ?? "") : "M",
      },
    },
  };
}

/** A string's mass per length, g/m: the order's own figure, or the known string's; from the maker's tension where that is given. */
function massOf(
  own: z.output<typeof ownString>,
  stock: StringsFile["violin"][number] | undefined,
  semitones: number,
): number {
  if (own.mass !== undefined) return own.mass;
  if (own.tension !== undefined) return massFromTension(own.tension, semitones);
  if (stock?.mass !== undefined) return stock.mass.is;
  // A known string's tension holds for its own pitch, whatever the order tunes it to.
  return stock?.tension === undefined
    ? 0
    : massFromTension(stock.tension, semitonesFromA4(stock.pitch) ?? semitones);
}

/** A string of another order of magnitude is likely written in another unit. */
function checkedSize(
  diameter: number,
  mass: number,
  from: "mass" | "tension",
  at: Pick<Problem, "position" | "name">,
): Problem | undefined {
  const range = (found: string, allowed: string, hint: string): Problem => {
    return { code: "range", ...at, found, allowed, hint };
  };
  if (!(diameter >= 0.1 && diameter <= 5))
    return range(`a diameter of ${diameter} mm`, "0.1 mm to 5 mm", "is it in mm?");
  const meant = likelyUnit(diameter, mass);
  if (meant === "likely") return undefined;
  const asWritten = from === "mass" && meant !== "unknown";
  const { least, most } = likelyDensity;
  const grams = (density: number) => Number(((mass * density) / meanDensity(diameter, mass)).toPrecision(2));
  const found = `${Number(mass.toPrecision(4))} g/m, ${Math.round(meanDensity(diameter, mass))} kg/m³ over ${diameter} mm`;
  const hint = asWritten
    ? `the unit is likely wrong: write ${mass} ${meant.unit}, or the figure in g/m`
    : `is the ${from === "mass" ? "mass in g/m" : "tension in N, the length that it holds for in mm"}, the diameter in mm?`;
  return range(found, `${grams(least)} g/m to ${grams(most)} g/m at this diameter`, hint);
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

/** Where each string is asked for, by `strings.NAME`. */
export function stringPlaces(asked: readonly Asked[]): { readonly [place: string]: Position } {
  return Object.fromEntries(
    asked.map(({ string, position }) => {
      return [`strings.${typeof string === "string" ? string : string.name}`, position];
    }),
  );
}
