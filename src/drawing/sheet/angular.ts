import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { Annotation } from "./annotate.ts";
import { dimensionText, type Wording } from "./dimension-text.ts";
import { baseFromMiddle, lettering } from "./lettering.ts";
import type { Marks, SheetText } from "./sheet.ts";
import { arrow, arrowSize, stroke } from "./strokes.ts";

/**
 * The angle at `corner` between the directions to two places, counter-clockwise from the first; mm of the model. `radii` are
 * tried in turn, mm on paper, and `lead` says to which of the two places no line runs, so that a thin one must.
 */
export type Angular = Wording & {
  readonly name: string;
  readonly corner: Point;
  readonly first: Point;
  readonly second: Point;
  readonly lead: "first" | "second" | "neither";
  readonly radii: readonly number[];
};

/** The angle that an angular dimension shows, degrees, 0 to 360. */
export function measuredAngle({ corner, first, second }: Angular): number {
  const turned = directionOf(corner, second) - directionOf(corner, first);
  return ((turned - 2 * Math.PI * Math.floor(turned / (2 * Math.PI))) * 180) / Math.PI;
}

function directionOf(from: Point, to: Point): number {
  return Math.atan2(to.y - from.y, to.x - from.x);
}

/** An angle's arc with arrowheads from outside, its text beyond one of its ends. */
export function angular(of: Angular, scale: number): Annotation {
  return {
    name: of.name,
    ways: function* () {
      for (const past of [3, 5, 8, 11, 14, 18, 22, 26, 30]) {
        for (const radius of of.radii) {
          for (const end of ["first", "second"] as const) {
            for (const align of ["left", "center", "right"] as const)
              yield marksOf(of, scale, radius, past, end, align);
          }
        }
      }
    },
  };
}

function marksOf(
  of: Angular,
  scale: number,
  radius: number,
  past: number,
  textEnd: "first" | "second",
  align: SheetText["align"],
): Marks {
  const corner = { x: of.corner.x * scale, y: of.corner.y * scale };
  const start = directionOf(of.corner, of.first);
  const sweep = (measuredAngle(of) * Math.PI) / 180;
  const at = (angle: number, r = radius): Point => ({
    x: corner.x + r * Math.cos(angle),
    y: corner.y + r * Math.sin(angle),
  });
  const tail = (arrowSize.length + 1) / radius;
  const reach = (arrowSize.length + past) / radius;
  const [before, after] = textEnd === "first" ? [reach, tail] : [tail, reach];
  const leadTo = of.lead === "first" ? start : start + sweep;
  const textAngle = textEnd === "first" ? start - before : start + sweep + after;
  const end = at(textAngle);
  const up = Math.sin(textAngle + (textEnd === "first" ? -1 : 1) * (Math.PI / 2)) > 0 ? 1 : -1;
  const { height } = lettering;
  const base = baseFromMiddle(height);
  const x = end.x + { left: 1, center: 0, right: -1 }[align] * 1.2;
  const y = end.y + base + (align === "center" ? up * 3 : 0);
  const text = dimensionText(measuredAngle(of), { ...of, unit: "deg" });
  return {
    lines: [
      { weight: "dimension", path: arcAbout(at, start - before, sweep + before + after) },
      ...(of.lead === "neither" ? [] : [stroke("extension", at(leadTo, 1.5), at(leadTo, radius + 1.5))]),
      arrow(at(start), start + Math.PI / 2 - tilt(radius)),
      arrow(at(start + sweep), start + sweep - Math.PI / 2 + tilt(radius)),
    ],
    texts: [{ text, x, y, height, turn: 0, align }],
  };
}

/** How far an arrowhead leans from the arc's tangent at its tip, so that its back lies on the arc, radians. */
function tilt(radius: number): number {
  return Math.asin(arrowSize.length / 2 / radius);
}

function arcAbout(at: (angle: number) => Point, start: number, sweep: number): Path {
  const points = [
    { ...at(start), bulge: Math.tan(sweep / 4) },
    { ...at(start + sweep), bulge: 0 },
  ];
  return { closed: false, points };
}
