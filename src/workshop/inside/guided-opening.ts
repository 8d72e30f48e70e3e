import { pathLength, signedArea } from "../../geometry/measure.ts";
import { offsetPath } from "../../geometry/offset/offset-path.ts";
import type { Path } from "../../geometry/path.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
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
  const drawn = straightened(recess);
  const outer = signedArea(drawn) < 0 ? reversedPath(drawn) : drawn;
  const path = reversedPath(fromMiddleOfLongest(outer));
  const run: CutRun = { path, uses: path.points.map(() => "cut") };
  const moved = offsetPath(path, -offset);
  if (moved.outcome !== "ok") return { kind: "no-edge", run };
  const hard = hardPlaces({ outer, holes: [] }, run, cutter, offset, "inside");
  if (hard.kind !== "ok") return { kind: "untold", run };
  const whole = pathLength(path);
  const places = hard.places.map((place) =>
    place.length > whole - 0.01 ? { ...place, from: 0, to: whole } : place,
  );
  if (places.some(spansStart)) return { kind: "untold", run };
  const small = first === null ? undefined : offsetPath(moved.path, -first / 2);
  return {
    ...{ kind: "ok", edge: reversedPath(moved.path), run, offset, places },
    plunge: plungeIn(moved.path, guide / 2),
    firstFits: small?.outcome === "ok",
  };
});

/** How far an arc strays from its chord at most to be taken as that, mm: a thousandth of what a cut is held to. */
const stray = 1e-5;

/** The same outline with arcs that are straight for all that can be cut as lines: their centres lie kilometres away, and what is worked out from there is coarse. */
function straightened({ closed, points }: Path): Path {
  const from = (i: number) => points[i]!;
  return {
    closed,
    points: points.map((point, i) => {
      const to = from((i + 1) % points.length);
      const rise = (Math.abs(point.bulge) * Math.hypot(to.x - point.x, to.y - point.y)) / 2;
      return rise < stray ? { ...point, bulge: 0 } : point;
    }),
  };
}

/** Whether a place runs over a closed run's beginning, so that its two ends say nothing: what lies between them isn't what it takes in. */
function spansStart({ from, to, length }: HardPlace): boolean {
  return to - from > length + 1 || to - from < length - 0.01;
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
