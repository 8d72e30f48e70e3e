import { lettering, textLength } from "../sheet/lettering.ts";
import type { SheetText } from "../sheet/sheet.ts";
import { wrapped } from "../sheet/wrapped.ts";
import type { Page } from "./tile-page.ts";
import type { TilePlan } from "./tile-plan.ts";

/** From one line to the next, and from one remark to the next, mm. */
const steps = { line: 4.6, remark: 7.5 } as const;

/** How high capitals of the heading stand, mm. */
const headingHeight = 4;

/** The longest line that reads well, mm. */
const longestLine = 240;

/**
 * The remarks and cautions of a drawing that has more of them than the foot of a sheet has room for, each in full, on as many pages of the plan's paper as
 * they take, under a heading. None are left out.
 */
export function remarkPages(heading: string, remarks: readonly string[], plan: TilePlan): Page[] {
  const { inside, paper, scale } = plan;
  const width = Math.min(inside.maxX - inside.minX - 8, longestLine);
  const letters = Math.floor(width / textLength({ text: "0", height: lettering.height }));
  const x = inside.minX + 4;
  const top = inside.maxY - headingHeight - 6;
  const pages: SheetText[][] = [];
  let y = Number.NEGATIVE_INFINITY;
  const place = (text: string, height: number) => {
    pages.at(-1)!.push({ text, x, y, height, turn: 0, align: "left" });
  };
  for (const remark of remarks) {
    const lines = wrapped(remark, letters);
    if (y - steps.line * lines.length < inside.minY + 4) {
      pages.push([]);
      y = top;
      for (const text of wrapped(heading, Math.floor((letters * lettering.height) / headingHeight))) {
        place(text, headingHeight);
        y -= steps.remark;
      }
    }
    for (const text of lines) {
      place(text, lettering.height);
      y -= steps.line;
    }
    y -= steps.remark - steps.line;
  }
  return pages.map((texts) => ({
    ...{ paper, scale },
    groups: [{ name: "remarks", marks: { lines: [], texts }, shift: { x: 0, y: 0 }, clip: null }],
  }));
}
