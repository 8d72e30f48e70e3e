import type { Path } from "../../geometry/path.ts";
import type { Straight } from "../../geometry/solid/segments-apart.ts";
import type { RestPart } from "../../order/rest-part.ts";

/** A border of a part's wood in its own plane, mm, and how much of its edge is eased at the front and at the back. */
export type Border = {
  readonly what: string;
  readonly path: Path;
  readonly eased: { readonly front: number; readonly back: number };
};

/** Something else that takes of a part's wood: sunk so deep from a face over an outline, or bored round along an axis; mm. */
export type Taken =
  | {
      readonly kind: "sunk";
      readonly what: string;
      readonly from: "front" | "back";
      readonly path: Path;
      readonly depth: number;
    }
  | { readonly kind: "bored"; readonly what: string; readonly axis: Straight; readonly radius: number };

/**
 * A part's wood as what is sunk into it finds it: in its own plane, seen from the front, y to the treble side and z out of the front; mm. `within` is what its
 * borders run round, as far as anything may be sunk at all.
 */
export type Ground = {
  readonly part: RestPart;
  readonly thickness: number;
  readonly within: Path;
  readonly borders: readonly Border[];
  readonly taken: readonly Taken[];
};
