import type { Point } from "../point.ts";
import type { FairCurve } from "./fair-curve.ts";
import { type SpanPlace, spanAt } from "./span-at.ts";

/** A tooth of a curvature comb: from its foot on the curve to its tip, mm; the curvature there, 1/mm. */
export type CombTooth = { readonly foot: Point; readonly tip: Point; readonly curvature: number };

/**
 * The curvature comb of a fair curve, for drawings: for each span its teeth in order of travel.
 *
 * Teeth stand at the stations and between them, evenly in the curve's parameter, no farther apart than about `step`
 * (mm). A tooth is `scale` (mm²) times the curvature long and stands square to the curve on its outer side: to the right
 * of travel where it turns counter-clockwise. A step or scale that isn't positive gives no teeth.
 */
export function curvatureComb(
  curve: FairCurve,
  options: { step: number; scale: number },
): readonly (readonly CombTooth[])[] {
  const { step, scale } = options;
  if (!(step > 0 && scale > 0)) return curve.spans.map(() => []);
  return curve.spans.map((span) => {
    const teeth = [tooth(spanAt(span, 0, 0), scale)];
    for (const [piece, length] of span.steps.entries()) {
      const count = Math.ceil(length / step);
      for (let i = 1; i <= count; i++) teeth.push(tooth(spanAt(span, piece, i / count), scale));
    }
    return teeth;
  });
}

function tooth({ x, y, tx, ty, curvature }: SpanPlace, scale: number): CombTooth {
  const length = scale * curvature;
  return { foot: { x, y }, tip: { x: x + ty * length, y: y - tx * length }, curvature };
}
