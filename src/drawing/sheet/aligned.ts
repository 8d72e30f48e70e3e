import type { Point } from "../../geometry/point.ts";
import type { Annotation } from "./annotate.ts";
import { dimensionText, type Wording } from "./dimension-text.ts";
import { baseFromMiddle, lettering } from "./lettering.ts";
import type { Marks } from "./sheet.ts";
import { arrow, arrowSize, stroke } from "./strokes.ts";

/** The true distance of two places of a view, whatever its direction; mm of the model. */
export type Aligned = Wording & { readonly name: string; readonly from: Point; readonly to: Point };

const shelf = 2;

/**
 * A distance along its own direction: its line runs through both places and on past `to`, where the text stands level on a shelf.
 * Both places are on lines of the view that run square to it, which stand for the thin lines of other dimensions.
 */
export function aligned(of: Aligned, scale: number): Annotation {
  return {
    name: of.name,
    ways: function* () {
      for (let past = 8; past < 90; past += 3) {
        for (const side of [1, -1] as const) yield marksOf(of, scale, past, side);
      }
    },
  };
}

function marksOf(of: Aligned, scale: number, past: number, side: 1 | -1): Marks {
  const [a, b] = [of.from, of.to].map(({ x, y }) => ({ x: x * scale, y: y * scale })) as [Point, Point];
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const [ux, uy] = [(b.x - a.x) / long, (b.y - a.y) / long];
  const angle = Math.atan2(uy, ux);
  const outside = long < 2 * arrowSize.length + 2;
  const elbow = { x: b.x + ux * past, y: b.y + uy * past };
  const end = { x: elbow.x + side * shelf, y: elbow.y };
  const stub = outside ? arrowSize.length + 2 : 0;
  const text = dimensionText(Math.hypot(of.to.x - of.from.x, of.to.y - of.from.y), of);
  const { height } = lettering;
  const align = side === 1 ? "left" : "right";
  return {
    lines: [
      stroke("dimension", { x: a.x - ux * stub, y: a.y - uy * stub }, elbow),
      stroke("dimension", elbow, end),
      arrow(a, angle + (outside ? 0 : Math.PI)),
      arrow(b, angle + (outside ? Math.PI : 0)),
    ],
    texts: [{ text, x: end.x + side * 0.8, y: end.y + baseFromMiddle(height), height, turn: 0, align }],
  };
}
