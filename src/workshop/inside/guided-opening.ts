import { extentsOf, signedArea } from "../../geometry/measure.ts";
import { offsetPath } from "../../geometry/offset/offset-path.ts";
import type { Path } from "../../geometry/path.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import { reversedPath } from "../../geometry/reversed-path.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import { step } from "../../step/step.ts";
import type { CutRun } from "../guided/cut-runs.ts";
import { guideOffset } from "../guided/guide-offset.ts";
import { type HardPlace, hardPlaces } from "../guided/hard-places.ts";
import { type Plunge, plungeIn } from "./plunge.ts";

/** What an opening is worked out from: a finished recess, closed, and the diameters of cutter, guide and (where there is one) first guide; mm. */
export type GuidedOpeningInput = {
  readonly recess: Path;
  readonly cutter: number;
  readonly guide: number;
  readonly first: number | null;
};

/**
 * An opening in a template. `edge` is its guided edge, closed and clockwise, so that the template lies on its left; `run` the recess's own outline the same
 * way round. `places` are those that this cutter and guide don't bring out. `plunge` is where the bit goes in; `firstFits` whether the first guide, whose
 * cut is smaller all round, has room in it. `no-edge` where the offset leaves none in one piece, `untold` where its hard places could not be told.
 */
export type GuidedOpening =
  | {
      readonly kind: "ok";
      readonly edge: Path;
      readonly run: CutRun;
      readonly offset: number;
      readonly places: readonly HardPlace[];
      readonly plunge: Plunge;
      readonly firstFits: boolean;
    }
  | { readonly kind: "no-edge" | "untold"; readonly run: CutRun };

/**
 * The opening that a guide follows so that its cutter brings a recess out: the recess's outline moved by half of what the cutter is larger than the guide, out
 * of the kept wood and so into the recess; a guide that is larger than its cutter wants an opening that is larger all round.
 */
export const guidedOpening = step("inside.opening", 1, (given: GuidedOpeningInput): GuidedOpening => {
  const { recess, cutter, guide, first } = given;
  const offset = guideOffset(cutter, guide);
  const outer = signedArea(recess) < 0 ? reversedPath(recess) : recess;
  const path = reversedPath(fromMiddleOfLongest(outer));
  const run: CutRun = { path, uses: path.points.map(() => "cut") };
  const moved = offsetPath(path, -offset);
  if (moved.outcome !== "ok") return { kind: "no-edge", run };
  const hard = hardPlaces({ outer: woodRound(path, cutter + guide), holes: [path] }, run, cutter, offset);
  if (hard.kind !== "ok" || hard.places.some(spansStart)) return { kind: "untold", run };
  const small = first === null ? undefined : offsetPath(moved.path, -first / 2);
  return {
    ...{ kind: "ok", edge: reversedPath(moved.path), run, offset, places: hard.places },
    plunge: plungeIn(moved.path, guide / 2),
    firstFits: small?.outcome === "ok",
  };
});

/** Wood round a recess, wide enough that its own corners have nothing to do with it. */
function woodRound(path: Path, reach: number): Path {
  const { minX, minY, maxX, maxY } = extentsOf([path])!;
  const room = 3 * reach;
  return rectangle(minX - room, minY - room, maxX + room, maxY + room);
}

/** Whether a place runs over a closed run's beginning, so that its two ends say nothing. */
function spansStart({ from, to, length }: HardPlace): boolean {
  return to - from > length + 1;
}

/** The same closed path, beginning in the middle of its longest piece: no corner lies there. */
function fromMiddleOfLongest(path: Path): Path {
  const pieces = segmentsOf(path);
  const longest = pieces.reduce(
    (best, piece, i) => (segmentLength(piece) > segmentLength(pieces[best]!) + 1e-6 ? i : best),
    0,
  );
  const piece = pieces[longest]!;
  const { x, y } = pointOn(piece, 0.5);
  const bulge = piece.kind === "arc" ? Math.tan(piece.sweep / 8) : 0;
  const { points } = path;
  const after = [...points.slice(longest + 1), ...points.slice(0, longest)];
  return { closed: true, points: [{ x, y, bulge }, ...after, { ...points[longest]!, bulge }] };
}
