import type { Path } from "../path.ts";
import type { Piece } from "../region.ts";
import type { Frame } from "./frame.ts";
import type { TriangleMesh } from "./triangle-mesh.ts";
import type { Vec3 } from "./vec3.ts";

/** An area: an outer path and its holes, all closed and simple. A solid takes them of whatever winding. */
export type Outline = Piece;

/**
 * What is taken off the edge between a face and the outer wall: a bevel reaching `inward` on the face and `down` on the
 * wall, or a rounding; mm. Corners of the outline stay sharp along it, the two slopes mitred.
 */
export type Edge =
  | { readonly kind: "bevel"; readonly inward: number; readonly down: number }
  | { readonly kind: "round"; readonly radius: number };

/** A section of a loft: a closed path in its frame's u and v, or a point, which only the first or last can be. */
export type Section =
  | { readonly kind: "path"; readonly path: Path; readonly frame: Frame }
  | { readonly kind: "point"; readonly at: Vec3 };

/**
 * The recipe of a solid: plain data, mm.
 *
 * `extrude`: outlines, which may lie over one another, raised from z = `base` by `height`; an edge is taken off the outer walls, holes stay straight.
 * `loft`: ruled between sections, point by point of their paths, which must be alike in number; later sections lie all
 * on one side of earlier ones. `mesh`: a closed surface from elsewhere. `place`: set into a frame, mirrored if that is
 * left-handed. `cut`: `from` less all of `by`.
 */
export type Solid =
  | {
      readonly kind: "extrude";
      readonly outlines: readonly Outline[];
      readonly base?: number;
      readonly height: number;
      readonly top?: Edge;
      readonly bottom?: Edge;
    }
  | { readonly kind: "loft"; readonly sections: readonly Section[] }
  | { readonly kind: "mesh"; readonly mesh: TriangleMesh }
  | { readonly kind: "place"; readonly solid: Solid; readonly frame: Frame }
  | { readonly kind: "union"; readonly solids: readonly Solid[] }
  | { readonly kind: "intersect"; readonly solids: readonly Solid[] }
  | { readonly kind: "cut"; readonly from: Solid; readonly by: readonly Solid[] };

/** What is wrong with a recipe; `refused` is the kernel's word; `too-large` is a number beyond `tolerance.largest`, `chord` a chord error that can't be worked with. */
export type SolidProblem =
  | "chord"
  | "not-finite"
  | "too-large"
  | "not-closed"
  | "no-area"
  | "repeated-point"
  | "crosses-itself"
  | "hole-outside"
  | "no-height"
  | "edge-without-room"
  | "sections-differ"
  | "sections-cross"
  | "too-few-sections"
  | "frame-skewed"
  | "nothing-given"
  | "open-mesh"
  | "inside-out"
  | "refused";

/** A fault and its place in the recipe, such as `cut.by[1].extrude`. */
export type SolidFault = { readonly kind: "invalid"; readonly problem: SolidProblem; readonly at: string };
