import type { Kind } from "./quantity.ts";

/** A dimension that a design declares and an order may set. `least` and `most` are what makes any sense at all. */
export type Settable = {
  readonly id: string;
  readonly kind: Extract<Kind, "length" | "angle" | "number" | "count">;
  readonly part: string;
  readonly label: string;
  readonly least: number;
  readonly most: number;
};

/** Makes dimensions of one part and kind, with what makes sense of any of them: call it with an id and a label. */
export function settable(part: string, kind: Settable["kind"], least: number, most: number) {
  return (id: string, label: string): Settable => ({ id, kind, part, label, least, most });
}
