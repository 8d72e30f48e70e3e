import type { Path, PathPoint } from "../../geometry/path.ts";
import type { FramePoint, SpecFace } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { type Ring, ringOf } from "../ring.ts";

/** A wing's face as the design has it and how far to lead it on past the joint, mm; the turn of its joint line, degrees, positive opening to the tail. */
export type WingOutlineInput = { readonly face: SpecFace; readonly mitre: number; readonly past: number };

/**
 * A wing's outline in its own plane: along its axis from the joint line's head end and out from the core, counter-clockwise, mm.
 * `joint` is the joint line's tail end, `beside` which way the edges run from its two ends; `over` the outline led on past the joint, for a solid that is cut off there. `no-joint`
 * where the ring doesn't begin at [0, 0] with one straight joined edge whose two ends are sharp.
 */
export type WingOutline =
  | {
      readonly kind: "ok";
      readonly path: Path;
      /** The edge of the design that each segment of the path belongs to. */
      readonly edges: readonly string[];
      readonly over: Path;
      readonly joint: FramePoint;
      readonly beside: { readonly head: FramePoint; readonly tail: FramePoint };
    }
  | { readonly kind: "no-joint"; readonly edge: string }
  | Exclude<Ring, { readonly kind: "ok" }>;

/** The ring of the design's edges, with its joined one laid along the joint line. */
export const wingOutline = step("wing.outline", 2, ({ face, mitre, past }: WingOutlineInput): WingOutline => {
  const [first, ...others] = face.edges;
  const last = others.at(-1);
  const straight = first?.joined != null && first.to != null && first.through.length === 0;
  const sharp = first?.corner === 0 && last?.corner === 0;
  if (!straight || !sharp || last.to?.[0] !== 0 || last.to[1] !== 0)
    return { kind: "no-joint", edge: first?.id ?? "" };
  const along = first.to![0];
  const joint: FramePoint = [along, -along * Math.tan((mitre * Math.PI) / 180)];
  const ring = ringOf({ ...face, edges: [{ ...first, to: joint }, ...others] }, {});
  if (ring.kind !== "ok") return ring;
  const { path, edges } = ring;
  return { kind: "ok", path, edges, joint, over: ledOn(path, past), beside: besideOf(path) };
});

function besideOf({ points }: Path): { head: FramePoint; tail: FramePoint } {
  const [start, end, next] = points;
  const before = points.at(-1)!;
  const way = (from: PathPoint, to: PathPoint): FramePoint => [to.x - from.x, to.y - from.y];
  return { head: way(start!, before), tail: way(end!, next!) };
}

/** The outline with its first edge pushed toward the core: the edges beside it are led straight on by a length. */
function ledOn({ closed, points }: Path, by: number): Path {
  const [start, end, next] = points;
  const before = points.at(-1)!;
  const head = onward(before, start!, before.bulge, by);
  const tail = onward(next!, end!, end!.bulge, by);
  return { closed, points: [head, tail, ...points.slice(1), { ...start!, bulge: 0 }] };
}

/** A place past `to` on the line from `from`; straight toward the core where an arc leads there, or a line that goes outward. */
function onward(from: PathPoint, to: PathPoint, bulge: number, by: number): PathPoint {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  if (bulge !== 0 || dy >= -length / 2) return { x: to.x, y: to.y - by, bulge: 0 };
  return { x: to.x + (dx / length) * by, y: to.y + (dy / length) * by, bulge: 0 };
}
