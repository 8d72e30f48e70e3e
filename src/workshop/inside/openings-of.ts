import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import { madeInlays } from "../../instrument/fingerboard/inlays.ts";
import type { Instrument } from "../../instrument/instrument.ts";
import { groundOf } from "../../instrument/recess/grounds.ts";
import type { InsideName } from "../../order/inside-names.ts";
import type { Spec } from "../../order/spec.ts";

/** Something to rout into a face: its name, its finished outline in its part's own axes seen from the front, and its depth from the face; mm. */
export type ToRout = { readonly id: string; readonly path: Path; readonly depth: number };

/**
 * What is routed into a part from a face, the shallowest first, so that a cover's ledge is cut before the recess in its floor; what is drilled is left out.
 * An inlay's depth is that under the highest place of the board over it, where a flat template lies.
 */
export function openingsOf({ part, face }: InsideName, made: Instrument): readonly ToRout[] {
  if (part === "fingerboard")
    return madeInlays(made).map(({ id, recess, thickness }) => ({ id, path: recess, depth: thickness }));
  const core = part === "neck" && face === "front" ? made.corePockets : [];
  return [...core, ...(made.sunken[part]?.pockets ?? [])]
    .flatMap(({ id, from, bore, depth, path }) =>
      from === face && bore === null && depth !== "through" ? [{ id, path, depth }] : [],
    )
    .sort((a, b) => a.depth - b.depth || (a.id < b.id ? -1 : 1));
}

/** The outline of the part that a template lies on, in the part's own axes; of a neck that of its core. */
export function outlineUnder({ part }: InsideName, spec: Spec, made: Instrument): Path {
  if (part !== "fingerboard") return groundOf(part, spec, made).outline;
  if (made.board.kind !== "ok") throw new RangeError(`the fingerboard has no outline: ${made.board.kind}`);
  return made.board.path;
}

/** The same seen from above as it lies, head at the left: turned over where that is the back, for a left hand, or both once. */
export function seenOpening(path: Path, turned: boolean): Path {
  return turned ? mirrored(path, "y") : path;
}
