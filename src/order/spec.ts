import type { Count } from "./count.ts";
import type { Position } from "./problem.ts";
import type { Kind } from "./quantity.ts";
import type { Shop } from "./shop.ts";
import type { TunerKind } from "./tuner-kind.ts";
import type { Voice } from "./voice.ts";

/** Who decided a value: the design for all counts, the design for this count, the order, or an option. */
export type Source = "design" | "string count" | "order" | "command line";

/** A settable dimension's value, mm or degrees, with its range, tolerance and where it came from. */
export type SpecValue = {
  readonly id: string;
  readonly kind: Kind;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly tolerance: number;
  readonly purpose: string;
  /** The dimension that it follows from in the design, if any. */
  readonly follows: string | null;
  readonly source: Source;
  readonly position: Position;
};

/** A string: pitch in semitones above A4, diameter mm, mass per length g/m, strength MPa where it is known. */
export type SpecString = {
  readonly name: string;
  readonly semitones: number;
  readonly diameter: number;
  readonly mass: number;
  readonly strength: number | null;
  readonly marks: { readonly diameter: string; readonly mass: string };
};

/** A place in a frame, mm. */
export type FramePoint = readonly [along: number, out: number];

/** One edge of an outline in its frame, with measures worked out to mm. */
export type SpecEdge = {
  readonly id: string;
  readonly to: FramePoint | null;
  readonly through: readonly FramePoint[];
  readonly follows: string | null;
  readonly corner: number;
  readonly joined: string | null;
};

/** An outline in a frame of the given size, mm, and the round holes in it. */
export type SpecFace = {
  readonly along: number;
  readonly out: number;
  readonly edges: readonly SpecEdge[];
  readonly holes: readonly { readonly id: string; readonly at: FramePoint; readonly size: number }[];
};

/** A check that a person overrules, and where the order says so. */
export type Overrule = { readonly check: string; readonly reason: string; readonly position: Position };

/** One order, resolved: all that is needed to work out the instrument, as numbers in mm and degrees. */
export type Spec = {
  readonly order: string;
  readonly revision: string | null;
  readonly design: string;
  readonly title: string;
  readonly voice: Voice;
  readonly build: "winged" | "one-piece";
  readonly count: Count;
  readonly hand: "right" | "left";
  /** Highest first. */
  readonly strings: readonly SpecString[];
  readonly values: { readonly [id: string]: SpecValue };
  readonly stations: { readonly fingerboard: readonly number[]; readonly neck: readonly number[] };
  readonly tuners: TunerKind;
  /** What the neck may be made of, the best first. */
  readonly neckWoods: readonly string[];
  readonly bridgeFace: SpecFace;
  /** Where the bridge's edges and holes stand in the design, by id, for whoever finds one at fault. */
  readonly bridgePlaces: { readonly [id: string]: Position };
  readonly shop: Shop;
  readonly overrule: readonly Overrule[];
};

/** The value of a settable dimension, mm or degrees. Every spec holds the whole catalogue; a name outside it throws. */
export function dimensionOf(spec: Pick<Spec, "values">, id: string): number {
  const entry = spec.values[id];
  if (entry === undefined) throw new RangeError(`${id} is in no catalogue`);
  return entry.value;
}
