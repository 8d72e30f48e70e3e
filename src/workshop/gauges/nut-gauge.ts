import { rectangle } from "../../geometry/rectangle.ts";
import { upright } from "../../geometry/solid/frame.ts";
import type { Section, Solid } from "../../geometry/solid/solid.ts";
import { boardWidth, type Taper } from "../../instrument/fingerboard/taper.ts";
import { step } from "../../step/step.ts";
import { plateText } from "./plate-text.ts";
import { raisedText, textSize } from "./raised-text.ts";

/** A gauge for the neck's width at the nut: its plate's thickness and the clearance a side, mm; what is lettered on it. */
export type NutGaugeInput = {
  readonly taper: Taper;
  readonly thickness: number;
  readonly clearance: number;
  readonly lines: readonly string[];
};

/** How far the legs reach down the neck's sides, and how wide they are, mm (G). */
const leg = { long: 6, wide: 7 };

/**
 * A gauge that straddles the neck from the front, its plate from the nut's fingerboard edge toward the tail: a bar with two
 * legs, as far apart as the plan is wide there and the clearance. Their inner sides follow the board's taper. It lies as it is
 * printed: across the neck along x, out of the front along y, the bar on y = 0; the letters look to the tail.
 */
export const nutGauge = step("gauge.nut-width", 2, (given: NutGaugeInput): Solid => {
  const { taper, thickness, clearance } = given;
  const text = { lines: given.lines, ...plateText };
  const size = textSize(text);
  const wide = Math.max(boardWidth(taper, 0) / 2 + leg.wide, size.width / 2 + 2);
  const high = size.height + 4;
  const over = 0.5;
  const slot: Solid = {
    kind: "loft",
    sections: [-over, thickness + over].map((along): Section => {
      const half = boardWidth(taper, along) / 2 + clearance;
      const path = rectangle(-half, -leg.long - over, half, 0);
      return { kind: "path", path, frame: { ...upright, origin: { x: 0, y: 0, z: along } } };
    }),
  };
  const plate: Solid = {
    ...{ kind: "extrude", height: thickness },
    outlines: [{ outer: rectangle(-wide, -leg.long, wide, high), holes: [] }],
  };
  return {
    kind: "union",
    solids: [{ kind: "cut", from: plate, by: [slot] }, raisedText(text, 0, high - 2, thickness)],
  };
});
