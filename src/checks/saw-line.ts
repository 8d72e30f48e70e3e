import type { Path } from "../geometry/path.ts";
import { distancesTo } from "../geometry/path-measures/distances-to.ts";
import { pointOn } from "../geometry/path-measures/segment-places.ts";
import type { Point } from "../geometry/point.ts";
import { segmentsOf } from "../geometry/segment.ts";
import { windingsOf } from "../geometry/winding-at.ts";
import { dimensionOf } from "../order/spec.ts";
import type { Model } from "../workshop/model.ts";
import type { Check } from "./check.ts";

/**
 * Into how many pieces a line or arc is cut to be measured, and what a distance may be short of, mm: a step sees bulges rounded
 * to 1e-6, which moves the middle of an arc with a chord of 200 mm by up to 5e-5.
 */
const fine = { pieces: 8, short: 1e-4 };

/**
 * Whether the saw leaves enough wood outside one of the neck's outlines: measured flat, place by place, from the finished
 * outline to what is kept and to the kerf's near edge, so not by the way in which the lines were made.
 */
export function sawLine(view: "plan" | "side"): Check {
  const file = `neck-saw-${view}`;
  return {
    id: `saw.line.${file}`,
    of: (model) => {
      const { spec } = model;
      const found = leastWood(model, view);
      const [least, wanted] = [dimensionOf(spec, "saw.least"), dimensionOf(spec, "saw.allowance")];
      const refused = found < least - fine.short;
      const thin = found < wanted - fine.short;
      const margin = view === "plan" ? "neck.allowance.side" : "neck.allowance.face";
      return {
        ...{ status: refused ? "refuse" : thin ? "attend" : "pass", stake: "spoilage", subject: "neck" },
        ...{ found, limit: refused ? least : wanted, unit: "mm", holds: [file] },
        why:
          found === 0
            ? "no saw line leads round this outline at its distance: lower saw.allowance"
            : thin
              ? `less wood than wanted is left outside the finished line: raise ${margin} or lower saw.allowance`
              : "the saw leaves its allowance everywhere outside the finished line",
        source: `design ${spec.design}, saw.allowance and saw.least (published allowances 1.6, 2 or 3)`,
      };
    },
  };
}

/** The least wood outside the finished outline, mm; 0 where nothing is sawn, or where finished wood is sawn away. */
function leastWood({ instrument, sawing }: Model, view: "plan" | "side"): number {
  const outline = view === "plan" ? instrument.neckPlan : instrument.neckSide;
  const sawn = sawing.cuts[view];
  if (outline.kind !== "ok" || sawn.kind !== "ok") return 0;
  const places = placesOn(outline.path);
  const [inKept, inNeck] = [windingsOf([sawn.kept]), windingsOf([outline.path])];
  if (places.some((place) => inKept(place) === 0)) return 0;
  const kerf = sawing.cuts.saw.kind === "ok" ? sawing.cuts.saw.blade.kerf : 0;
  const cuts = sawn.lines.flatMap(({ path }) => placesOn(path));
  if (cuts.some((place) => inNeck(place) !== 0)) return 0;
  const [toKept, toFinished] = [distancesTo(segmentsOf(sawn.kept)), distancesTo(segmentsOf(outline.path))];
  return Math.max(
    0,
    Math.min(
      ...places.map((place) => toKept(place)),
      ...placesOn(sawn.kept).map((place) => toFinished(place)),
      ...cuts.map((place) => toFinished(place) - kerf / 2),
    ),
  );
}

function placesOn(path: Path): Point[] {
  return segmentsOf(path).flatMap((segment) =>
    Array.from({ length: fine.pieces + 1 }, (_, i) => pointOn(segment, i / fine.pieces)),
  );
}
