import { rectangle } from "../../geometry/rectangle.ts";
import { upright } from "../../geometry/solid/frame.ts";
import type { Section, Solid } from "../../geometry/solid/solid.ts";
import { type SectionForm, sectionPath } from "../../instrument/neck/section.ts";
import { step } from "../../step/step.ts";
import { plateText } from "./plate-text.ts";
import { type RaisedText, raisedText, textSize } from "./raised-text.ts";

/**
 * A gauge for a section of the neck: the section's form before the plate, in its middle and behind it, `over` mm outside of
 * its two faces; its thickness and the clearance a side, mm; what is lettered on it.
 */
export type SectionGaugeInput = {
  readonly before: SectionForm;
  readonly middle: SectionForm;
  readonly behind: SectionForm;
  readonly over: number;
  readonly thickness: number;
  readonly clearance: number;
  readonly lines: readonly string[];
};

/** Plastic beside and under the hollow, mm: what a printed arm needs to keep its form (G). */
const arm = 8;

/** How far under the board's glue surface the arms end, mm: clear of glue that is squeezed out. */
const under = 0.3;

/**
 * A concave gauge that is laid on the neck's back at x: a plate with the neck's own section sunk into it, and the clearance
 * all along. Its hollow follows the neck through its thickness, so that it bears over all of it. It lies as it is printed:
 * across the neck along x, out of the front along y, the plate from z = 0 up; that face, with the letters, looks to the tail.
 */
export const sectionGauge = step("gauge.section", 2, (given: SectionGaugeInput): Solid => {
  const { thickness, lines } = given;
  const text: RaisedText = { lines, ...plateText };
  const { half, depth } = given.middle;
  const size = textSize(text);
  const wide = Math.max(half + arm, size.width / 2 + 2);
  const back = -depth - 3;
  const low = back - size.height - 4;
  const plate: Solid = {
    ...{ kind: "extrude", height: thickness },
    outlines: [{ outer: rectangle(-wide, low, wide, -under), holes: [] }],
  };
  return {
    kind: "union",
    solids: [{ kind: "cut", from: plate, by: [hollow(given)] }, raisedText(text, 0, back - 2, thickness)],
  };
});

/** What is sunk into the plate: the neck with its clearance, from a little before the plate to a little behind it. */
function hollow({ before, behind, over, thickness, clearance }: SectionGaugeInput): Solid {
  const section = (form: SectionForm, along: number): Section => ({
    ...{ kind: "path", path: sectionPath(form, clearance) },
    frame: { ...upright, origin: { x: 0, y: 0, z: along } },
  });
  return { kind: "loft", sections: [section(before, -over), section(behind, thickness + over)] };
}
