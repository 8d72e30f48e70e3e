import type { Kind } from "./quantity.ts";

/** What a design may have or not: its dimensions stand beside it in the design, and an order without it has none of them. */
export type Feature =
  | "frets"
  | "dots"
  | "side-dots"
  | "inlays"
  | "cradle"
  | "saddle"
  | "wings"
  | "recesses"
  | BodyFeature
  | RestFeature;

/** The features of a body in one piece: itself, what it has where the core lies in a recess, and where it has corners. */
export type BodyFeature = "body" | "body-recess" | "body-corners";

/** The features of what holds an instrument up: its chin rest and how that is held, mounts for other rests, its endpin. */
export type RestFeature =
  | "chin-rest"
  | "chin-clamp"
  | "chin-screws"
  | "shoulder-mounts"
  | "knee-mounts"
  | "endpin";

/** A dimension that a design declares and an order may set. `least` and `most` are what makes any sense at all. */
export type Settable = {
  readonly id: string;
  readonly kind: Extract<Kind, "length" | "angle" | "frequency" | "number" | "count">;
  readonly part: string;
  readonly label: string;
  readonly least: number;
  readonly most: number;
  /** The feature that it belongs to; none for what every instrument has. */
  readonly feature: Feature | null;
};

/** Makes dimensions of one part and kind, with what makes sense of any of them: call it with an id and a label. */
export function settable(
  part: string,
  kind: Settable["kind"],
  least: number,
  most: number,
  feature: Feature | null = null,
) {
  return (id: string, label: string): Settable => ({ id, kind, part, label, least, most, feature });
}
