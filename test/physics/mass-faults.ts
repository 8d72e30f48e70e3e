import { parse } from "yaml";
import type { SolidMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import type { Masses } from "../../src/physics/mass/masses.ts";
import type { Model } from "../../src/workshop/model.ts";
import { sampleText } from "../samples.ts";

/** How far volumes may differ, as a share, and middles, mm. */
const allowed = { volume: 0.0005, middle: 0.02 };

/** The file of woods as a plain YAML reader has it. */
export const woods: Map<string, number> = new Map(
  parse(sampleText("woods.yaml")).woods.map((one: { wood: string; density: string }) => {
    return [one.wood, Number.parseFloat(one.density)];
  }),
);

export type Meshed = ReadonlyMap<string, SolidMeasures>;

export type At = { readonly x: number; readonly y: number; readonly z: number };
export const away = (a: At, b: At) => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);

/** What a part is made of: that of its board in the shop, or what the design says. */
export function woodOf(model: Model, name: string): string {
  const { spec, sawing, blanks } = model;
  const found = name === "neck" ? sawing.stock : blanks.fingerboard;
  if (name === "neck" || name === "fingerboard") {
    if (found.kind !== "ok") throw new Error(`no board for the ${name}`);
    return spec.shop.stock.boards.find(({ id }) => id === found.way.board)!.wood;
  }
  const own = spec.partWoods;
  if (name === "bridge" || name === "nut" || name === "tailpiece") return own[name];
  if (name.startsWith("cover-")) return own.cover!;
  return name === "rods" ? own.rod : name === "body" ? own.body! : own.wings!;
}

/** What a test looks at, and what it plants its faults in. */
export type Weighing = Pick<Masses, "parts" | "pieces" | "whole" | "moment">;

/** Everything about an instrument's masses that meshes and the file of woods tell otherwise. */
export function faults(model: Model, masses: Weighing, measures: Meshed): string[] {
  const found: string[] = [];
  for (const [name, { volume, centre }] of measures) {
    const part = masses.parts.find((one) => one.name === name);
    if (part === undefined) {
      found.push(`${name} left out`);
      continue;
    }
    if (!(Math.abs(part.volume / volume - 1) < allowed.volume)) found.push(`${name} volume`);
    if (!(away(part.centre, centre) < allowed.middle)) found.push(`${name} middle`);
    const weight = volume * woods.get(woodOf(model, name))! * 1e-6;
    if (!(Math.abs(part.mass / weight - 1) < allowed.volume)) found.push(`${name} mass`);
  }
  const { spec, instrument } = model;
  const strings = spec.strings.map(({ mass }, i) => mass * (instrument.runs.lengths[i]! / 1000));
  const weighed = masses.pieces.filter(({ kind }) => kind === "string");
  if (weighed.length !== strings.length || weighed.some(({ mass }, i) => !(mass > strings[i]!)))
    found.push("strings");
  const sum = masses.pieces.reduce((all, { mass }) => all + mass, 0);
  if (!(Math.abs(sum - masses.whole.mass) < 1e-9 * sum)) found.push("whole's mass");
  for (const axis of ["x", "y", "z"] as const) {
    const moment = masses.pieces.reduce((all, { mass, centre }) => all + mass * centre[axis], 0);
    if (!(Math.abs(moment - masses.whole.mass * masses.whole.centre[axis]) < 1e-6 * sum))
      found.push(`whole's ${axis}`);
  }
  const partsIn = masses.pieces.filter(({ kind }) => kind === "part");
  if (partsIn.length !== masses.parts.length) found.push("parts in the whole");
  if (
    !partsIn.every(
      ({ mass, centre }, i) => mass === masses.parts[i]!.mass && away(centre, masses.parts[i]!.centre) === 0,
    )
  )
    found.push("parts as pieces");
  const turned =
    (masses.whole.mass / 1000) * 9.80665 * (spec.values["hold.x"]!.value - masses.whole.centre.x);
  if (!(Math.abs(turned - masses.moment) < 1e-6 * Math.abs(turned))) found.push("moment");
  return found;
}
