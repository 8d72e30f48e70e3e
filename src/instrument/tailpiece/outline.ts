import { circle } from "../../geometry/circle.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path, PathPoint } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { SpecFace } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { type Ring, ringOf } from "../ring.ts";
import { type FrontEdge, frontEdge } from "./front.ts";

/** What a tailpiece's outline follows from, mm; strings from the highest to the lowest, by where they pass the bridge and leave the plate. */
export type TailpieceInput = {
  /** The face in its frame: across from the bass side, and from the plate's end toward the exits. */
  readonly face: SpecFace;
  readonly strings: readonly { readonly contact: Point; readonly exit: Point }[];
  /** A string hole's diameter, and how far behind its exit it is. */
  readonly hole: { readonly diameter: number; readonly at: number };
};

/** A round hole through the plate, mm. */
export type PlateHole = { readonly size: number; readonly at: Point; readonly path: Path };

/**
 * The tailpiece from the front, mm: x along the core's front from its start toward the tail, y to the treble side.
 *
 * `path` runs counter-clockwise; its front edge passes through the strings' exits. The plate's top face lies at the tailpiece's
 * height over the core's front, where the strings' centres leave it: each string comes up through its hole and lies to the front
 * in a groove as wide as itself and half as deep, filed when the string is fitted and no part of this outline. `front` and `end`
 * are x of the plate's two ends on the centreline, `foremost` x of the place nearest to the bridge. `strings` are the strings'
 * holes, highest first, on the string's own line in plan led on behind the exit; `posts` the holes that the design's face has.
 */
export type TailpieceOutline =
  | {
      readonly kind: "ok";
      readonly path: Path;
      readonly front: number;
      readonly foremost: number;
      readonly end: number;
      readonly strings: readonly (PlateHole & { readonly exit: Point })[];
      readonly posts: readonly (PlateHole & { readonly id: string })[];
    }
  | Exclude<Ring, { readonly kind: "ok" }>
  | { readonly kind: Exclude<FrontEdge["kind"], "ok">; readonly edge: "front" };

/** The tailpiece's outline: the design's ring of edges round the front edge, with the strings' holes and the posts'. */
export const tailpieceOutline = step("tailpiece.outline", 1, (given: TailpieceInput): TailpieceOutline => {
  const { face, strings, hole } = given;
  const made = frontEdge(
    strings.map(({ exit }) => exit),
    face.along / 2,
  );
  if (made.kind !== "ok") return { kind: made.kind, edge: "front" };
  const end = made.middle + face.out;
  // The face's frame stands on its end and looks at the bridge; turned a quarter it lies as the core does.
  const into = ({ x, y, bulge }: PathPoint) => ({ x: y + face.along / 2, y: end - x, bulge });
  const back = <P extends Point>(point: P): P => ({
    ...point,
    x: end - point.y,
    y: point.x - face.along / 2,
  });
  const ring = ringOf(face, { "tailpiece.front": made.points.map(into) });
  if (ring.kind !== "ok") return ring;
  const bored = (size: number, at: Point): PlateHole => ({ size, at, path: circle(at, size / 2) });
  const path = { closed: true, points: ring.path.points.map(back) };
  return {
    ...{ kind: "ok", path, front: made.middle, foremost: extentsOf([path])!.minX, end },
    strings: strings.map((string) => ({
      ...bored(hole.diameter, behind(string, hole.at)),
      exit: string.exit,
    })),
    posts: face.holes.map(({ id, size, at: [x, y] }) => ({ ...bored(size, back({ x, y })), id })),
  };
});

/** A place on a string's line in plan, so far behind its exit. */
function behind({ contact, exit }: TailpieceInput["strings"][number], away: number): Point {
  const [dx, dy] = [exit.x - contact.x, exit.y - contact.y];
  const length = Math.hypot(dx, dy);
  return { x: exit.x + (dx * away) / length, y: exit.y + (dy * away) / length };
}
