import type { BodyEdge } from "./body-edge.ts";
import type { Count } from "./count.ts";
import type { HardwareItem } from "./hardware-item.ts";
import type { Position } from "./problem.ts";
import type { Kind } from "./quantity.ts";
import type { RecessPart } from "./recess-part.ts";
import type { Paper, Shop } from "./shop.ts";
import type { Side } from "./side.ts";
import type { SpecRests } from "./spec-rests.ts";
import type { SpecVeneer } from "./spec-veneer.ts";
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
  /** Said where what a cutter can't bring out of this edge is finished by hand. */
  readonly finish?: "hand";
};

/** An outline in a frame of the given size, mm, and the round holes in it. */
export type SpecFace = {
  readonly along: number;
  readonly out: number;
  readonly edges: readonly SpecEdge[];
  readonly holes: readonly { readonly id: string; readonly at: FramePoint; readonly size: number }[];
};

/** An outline that is let into the fingerboard: its frame's middle from the nut and to the treble side, mm. */
export type SpecInlay = {
  readonly id: string;
  readonly at: { readonly x: number; readonly y: number };
  readonly face: SpecFace;
};

/** How an edge between a face and what is cut is eased. */
export type EdgeProfile = "round" | "bevel" | "none";

/**
 * A wing's outline in its own plane, seen from the front: along its axis from the joint line's head end, and out from the core. Its
 * edge that is joined to the neck stands for the joint line. Pins lie along the joint and down from the wing's front, mm.
 */
export type SpecWing = {
  readonly face: SpecFace;
  readonly profile: { readonly front: EdgeProfile; readonly back: EdgeProfile };
  readonly pins: readonly { readonly id: string; readonly at: FramePoint }[];
};

/**
 * A body in one piece: whether the core runs right through it or lies in a recess of its front, whether its bouts meet the waist in
 * corners, how its edges are eased, and which are cut to the line.
 */
export type SpecBody = {
  readonly core: "through" | "recess";
  readonly corners: "none" | "four";
  readonly profile: { readonly front: EdgeProfile; readonly back: EdgeProfile };
  readonly cut: readonly BodyEdge[];
};

/**
 * How the bridge stands: by itself on the core's front; as a saddle screwed down through its foot, whose screws' places are
 * across from the foot's bass end and along from its tail side; or over a pickup in a cradle, whose outline lies in the core's
 * front: along it, and across from the bass end.
 */
export type SpecFoot =
  | { readonly kind: "standing" }
  | { readonly kind: "saddle"; readonly screws: SpecFace["holes"] }
  | { readonly kind: "cradle"; readonly face: SpecFace };

/** Something that is screwed on: the item that it is, if hardware.yaml knows it, the mass of one, g, and where: one at each tuner or each string's exit, one where the bridge stands, or at a place, mm. */
export type SpecHardware = {
  readonly id: string;
  readonly item: string | null;
  readonly mass: number;
  readonly at: "tuners" | "exits" | "bridge" | readonly [x: number, y: number, z: number];
};

/** What a recess is for: a bought item, or an outline of its own, so deep without its cover's ledge, mm; the holes of its face are the cover's screws' places. */
export type SpecHeld =
  | { readonly kind: "item"; readonly item: HardwareItem }
  | { readonly kind: "face"; readonly face: SpecFace; readonly depth: number };

/**
 * A recess: its middle in the plane of its part, mm, along it and out from the core (in a wing), or to the treble side (in body and neck); how its
 * length is turned there and which way leads out of it, degrees, the same way round.
 */
export type SpecRecess = {
  readonly id: string;
  readonly in: RecessPart;
  readonly from: "front" | "back";
  readonly at: FramePoint;
  readonly turn: number;
  readonly out: number | null;
  readonly holds: SpecHeld;
  readonly cover: boolean;
};

/** A wire's bore from a recess, or from under the bridge, to another recess: its diameter, and its middle over the floor that it leads to, and over the one that it leads from where these are in two parts, mm. */
export type SpecBore = {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly size: number;
  readonly height: number;
  readonly begins: number;
};

/** A check that a person overrules, and where the order says so. */
export type Overrule = { readonly check: string; readonly reason: string; readonly position: Position };

/** A person's own places of a fixture's clamps and handholds, along the line that its base begins at and away from it, mm; not there where the program places them. */
export type OwnPlaces = {
  readonly clamps?: readonly {
    readonly clamp: string;
    readonly at: readonly [along: number, away: number];
  }[];
  readonly handholds?: readonly (readonly [along: number, away: number])[];
};

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
  readonly surface: "cylinder" | "cone";
  /** The frets that the order asks for, and where it asks for them; none for a fretless board. */
  readonly frets: {
    readonly count: number;
    readonly slots: "through" | "blind";
    readonly position: Position;
  } | null;
  /** The places of dots, as numbers of frets (or of semitones over the open string), in the board's face and its bass edge. */
  readonly dots: { readonly face: readonly number[]; readonly side: readonly number[] };
  readonly inlays: readonly SpecInlay[];
  readonly stations: { readonly fingerboard: readonly number[]; readonly neck: readonly number[] };
  readonly tuners: TunerKind;
  /** Whether what a cutter can't bring out of the head's edges, from its end to the neck's first station, is finished by hand. */
  readonly headFinish: "hand" | null;
  /** What the neck may be made of, the best first. */
  readonly neckWoods: readonly string[];
  /** What the fingerboard may be made of, the best first. */
  readonly boardWoods: readonly string[];
  /** What the other parts are made of; wings and body of null are made of what the neck is, covers of null of what the tailpiece is. */
  readonly partWoods: {
    readonly [part in "bridge" | "nut" | "tailpiece" | "rod"]: string;
  } & { readonly wings: string | null; readonly body: string | null; readonly cover: string | null };
  /** Density of everything that a part may be made of, by name, kg/m³. */
  readonly densities: { readonly [wood: string]: number };
  readonly hardware: readonly SpecHardware[];
  readonly bridgeFace: SpecFace;
  readonly bridgeFoot: SpecFoot;
  readonly tailpieceFace: SpecFace;
  /** None on an instrument whose body is in one piece. */
  readonly wings: { readonly [side in Side]: SpecWing } | null;
  /** None on a winged instrument. */
  readonly body: SpecBody | null;
  readonly rests: SpecRests;
  readonly veneers: readonly SpecVeneer[];
  readonly recesses: readonly SpecRecess[];
  readonly bores: readonly SpecBore[];
  /** Where edges and holes stand in the design, by the face's path and their id, and strings where they are asked for, by `strings.NAME`: for whoever finds one at fault. */
  readonly places: { readonly [place: string]: Position };
  readonly shop: Shop;
  /** What the order names for its fixtures, by the names of their files; null where the program chooses. */
  readonly fixtures: {
    readonly [file: string]: {
      readonly [what in "machine" | "cutter" | "guide"]: string | null;
    } & OwnPlaces & {
        /** Of a shaper's fixture: on top of the work, as is usual, or under it, with the collar under the cutter. */
        readonly template?: "over" | "under";
      };
  };
  /** What full-size sheets are laid out on. */
  readonly paper: Paper;
  readonly overrule: readonly Overrule[];
};

/**
 * The value of a settable dimension, mm or degrees.
 * Every spec holds the whole catalogue but for features that it doesn't have; asking for one of those, or for a name outside
 * the catalogue, throws.
 */
export function dimensionOf(spec: Pick<Spec, "values">, id: string): number {
  const entry = spec.values[id];
  if (entry === undefined) throw new RangeError(`${id} is no dimension of this instrument`);
  return entry.value;
}
