import { cutterAccess } from "../../geometry/access/cutter-access.ts";
import { extentsOf } from "../../geometry/measure.ts";
import { offsetRegion } from "../../geometry/offset/offset-region.ts";
import type { Path } from "../../geometry/path.ts";
import type { Region } from "../../geometry/region.ts";
import { regionWithin } from "../../geometry/region-within.ts";
import { validateRegion } from "../../geometry/validate/validate-region.ts";
import type { SpecInlay } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { ringOf } from "../ring.ts";
import { placesOn } from "./places-on.ts";
import { type BoardSurface, boardArc, boardTop } from "./surface.ts";

/** What an inlay follows from; mm. `clearance` is a side, `depth` that of the recess at the lowest place of the surface over it. */
export type InlayInput = {
  readonly board: BoardSurface;
  readonly inlay: SpecInlay;
  readonly cutter: number;
  readonly clearance: number;
  readonly depth: number;
};

/**
 * An inlay on the board, x from the nut and y to the treble side: the design's outline, the recess that the cutter reaches in it and
 * the insert that goes into that. `floor` is the height of the recess's flat floor over the face that the board is glued to, `thickness` what the
 * insert needs to stand out everywhere; `unreached` how far the design's outline lies from what the cutter reaches, at most,
 * and `area` what it leaves, mm². All in mm.
 */
export type MadeInlay = {
  readonly kind: "ok";
  readonly id: string;
  readonly design: Path;
  readonly recess: Path;
  readonly insert: Path;
  readonly floor: number;
  readonly depth: number;
  readonly thickness: number;
  readonly unreached: number;
  readonly area: number;
};

/**
 * An inlay, or why there is none: an edge that can't be made; an outline that crosses itself; a recess that a cutter of the
 * given diameter doesn't cut in one piece, with the largest that would (mm, by tenths; null: none of 0.1 or more); an
 * insert of which the clearance leaves nothing or pieces.
 */
export type Inlay =
  | MadeInlay
  | { readonly kind: "no-curve" | "no-room" | "unfair"; readonly id: string; readonly edge: string }
  | { readonly kind: "crossing"; readonly id: string }
  | { readonly kind: "no-insert"; readonly id: string }
  | { readonly kind: "no-recess"; readonly id: string; readonly would: number | null };

/**
 * One inlay. Its recess has a flat floor, `depth` under the lowest place of the surface over it, so that the insert shows
 * everywhere: on an arched board the recess is deeper elsewhere.
 */
export const inlayOf = step("fingerboard.inlay", 1, (given: InlayInput): Inlay => {
  const { board, inlay, cutter, clearance, depth } = given;
  const { id, at, face } = inlay;
  const ring = ringOf(face, {});
  if (ring.kind !== "ok") return { kind: ring.kind, id, edge: ring.edge };
  const region = regionWithin(moved(ring.path, at.x - face.along / 2, at.y - face.out / 2));
  if (validateRegion(region).some(({ code }) => code !== "repeated-point")) return { kind: "crossing", id };
  const access = cutterAccess(region, cutter / 2, "inside");
  if (access.outcome === "invalid" || access.outcome === "shut" || access.reached.length !== 1)
    return { kind: "no-recess", id, would: wouldDo(region, cutter) };
  const inset = offsetRegion(access.reached, -clearance);
  if (inset.outcome !== "ok") return { kind: "no-insert", id };
  const recess = access.reached[0]!.outer;
  const left = access.outcome === "leaves" ? access.left : [];
  const floor = Math.min(...placesOn(recess).map(({ x, y }) => boardTop(board, x, y))) - depth;
  return {
    ...{ kind: "ok", id, design: region[0]!.outer, recess, insert: inset.region[0]!.outer },
    ...{ floor, depth, thickness: highestOver(recess, board) - floor },
    unreached: left[0]?.depth ?? 0,
    area: left.reduce((sum, piece) => sum + piece.area, 0),
  };
});

function moved({ closed, points }: Path, dx: number, dy: number): Path {
  return { closed, points: points.map(({ x, y, bulge }) => ({ x: x + dx, y: y + dy, bulge })) };
}

/** The largest cutter, by tenths of a millimetre, that cuts the recess in one piece. */
function wouldDo(region: Region, cutter: number): number | null {
  for (let tenths = Math.ceil(cutter * 10) - 1; tenths >= 1; tenths--) {
    const access = cutterAccess(region, tenths / 20, "inside");
    if ((access.outcome === "clear" || access.outcome === "leaves") && access.reached.length === 1)
      return tenths / 10;
  }
  return null;
}

/** The highest place of the surface over the recess's extents: never less than over the recess itself. */
function highestOver(recess: Path, board: BoardSurface): number {
  const { minX, maxX, minY, maxY } = extentsOf([recess])!;
  return Math.max(
    ...Array.from({ length: 65 }, (_, i) => {
      const x = minX + ((maxX - minX) * i) / 64;
      return boardTop(board, x, Math.min(maxY, Math.max(minY, boardArc(board, x).y)));
    }),
  );
}
