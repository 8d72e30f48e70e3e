import type { Path } from "../../geometry/path.ts";
import { distanceTo, pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { type Segment, segmentsOf } from "../../geometry/segment.ts";
import { windingsOf } from "../../geometry/winding-at.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { PartSawing } from "../../workshop/part-sawing.ts";
import type { SawnRule } from "./sawn-check.ts";

/** Into how many pieces a line or arc is cut to be measured, and what a distance may be short of, mm. */
const fine = { pieces: 4, short: 1e-4 };

/**
 * Whether the saw leaves enough wood outside a part's finished outline and its lines go round all of it: measured place by place, and at a bevelled
 * joint on both of its arrises, so not by the way in which the lines were made. Found: the least wood, mm; 0 where finished
 * wood is sawn away or no line goes.
 */
export const partSawLine: SawnRule = {
  name: "saw.line",
  of: (sawing, { spec }) => {
    const [least, wanted] = [dimensionOf(spec, "saw.least"), dimensionOf(spec, "saw.allowance")];
    const found = leastWood(sawing, wanted);
    const refused = found < least - fine.short;
    const thin = found < wanted - fine.short;
    return {
      ...{ status: refused ? "refuse" : thin ? "attend" : "pass", stake: "spoilage" },
      ...{ found, limit: refused ? least : wanted, unit: "mm" },
      why:
        found === 0
          ? "the saw lines don't lead round this outline at their distance: lower saw.allowance"
          : thin
            ? "less wood than wanted is left outside the finished line: make the blank larger, or lower saw.allowance"
            : "the saw leaves its allowance everywhere outside the finished line",
      source: `design ${spec.design}, saw.allowance and saw.least (published allowances 1.6, 2 or 3)`,
    };
  },
};

function leastWood(sawing: PartSawing, wanted: number): number {
  const { shape, cuts, blank } = sawing;
  if (cuts.sawn.kind !== "ok") return 0;
  const kerf = cuts.saw.kind === "ok" ? cuts.saw.blade.kerf : 0;
  const lines = cuts.sawn.lines;
  const [outline, inPart] = [segmentsOf(shape.outline), windingsOf([shape.outline])];
  const square = lines.filter(({ cut }) => cut !== "joint").map(({ path }) => path);
  const places = square.flatMap(placesOn);
  if (places.some((place) => inPart(place) !== 0)) return 0;
  const edge = ({ x, y }: Point) => Math.min(x - blank.minX, blank.maxX - x, y - blank.minY, blank.maxY - y);
  // Where the blank's own face is kept, no line has to be, and that wood is all there is.
  const sawn = lines.flatMap(({ path }) => segmentsOf(path));
  const far = cutPlaces(sawing).map((place) => Math.min(distanceTo(sawn, place), edge(place)));
  if (far.some((away) => away > 4 * (wanted + kerf) + 1)) return 0;
  const beyond = placesOn(shape.outline).map(edge);
  if (beyond.some((away) => away < -fine.short)) return 0;
  const joint = jointWood(sawing);
  return Math.max(
    0,
    Math.min(
      ...places.map((place) => distanceTo(outline, place) - kerf / 2),
      // An outline on the blank's own edge isn't cut there.
      ...beyond.filter((away) => away > fine.short),
      ...(joint === null ? [] : [joint - kerf / 2]),
    ),
  );
}

/** Places on the edges that are sawn square: all of an outline but a wing's joint. */
function cutPlaces({ shape: { kind, outline } }: PartSawing): Point[] {
  const segments = segmentsOf(outline);
  return (kind === "wing" ? segments.slice(1) : segments).flatMap(placesOnSegment);
}

/** How far a joint's saw line stands from the joint's face, square to it: the less of what it is at either end of the joint line; none where there is no joint. */
function jointWood({ shape, cuts }: PartSawing): number | null {
  if (shape.kind !== "wing" || cuts.sawn.kind !== "ok") return null;
  const line = cuts.sawn.lines.find(({ cut }) => cut === "joint");
  if (line === undefined) return 0;
  const bevel = (shape.bevel * Math.PI) / 180;
  const [tx, ty] = shape.tail;
  const length = Math.hypot(tx, ty);
  const drop = shape.up === "front" ? 0 : shape.thickness;
  const [first, last] = [line.path.points[0]!, line.path.points.at(-1)!];
  return Math.min(
    ...[first, last].map(({ x, y }) => {
      // Out of the wing in its front's plane; the face runs back into the wing by the bevel on the way down.
      const out = (x * ty - y * tx) / length;
      return out * Math.cos(bevel) + drop * Math.sin(bevel);
    }),
  );
}

function placesOn(path: Path): Point[] {
  return segmentsOf(path).flatMap(placesOnSegment);
}

function placesOnSegment(segment: Segment): Point[] {
  return Array.from({ length: fine.pieces + 1 }, (_, i) => pointOn(segment, i / fine.pieces));
}
