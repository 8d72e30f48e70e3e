import { describe, expect, it } from "vitest";
import type { Page } from "../../src/drawing/tiles/tile-page.ts";
import { arcCubics } from "../../src/files/pdf/arc-cubics.ts";
import { LacksLetterError } from "../../src/files/pdf/stroke-font.ts";
import { pdfBytes } from "../../src/files/pdf/write-pdf.ts";
import { type Arc, segmentBetween } from "../../src/geometry/segment.ts";

const page = (text: string): Page => ({
  paper: { id: "A4", width: 210, height: 297 },
  scale: [1, 1],
  groups: [
    {
      ...{ name: "words", shift: { x: 0, y: 0 }, clip: null },
      marks: { lines: [], texts: [{ text, x: 20, y: 20, height: 2.5, turn: 0, align: "left" }] },
    },
  ],
});

describe("a PDF", () => {
  it("has the same bytes twice, whatever was written between", async () => {
    const first = await pdfBytes([page("BENCH 12")], "a");
    await pdfBytes([page("ANOTHER"), page("TWO")], "b");
    expect(await pdfBytes([page("BENCH 12")], "a")).toEqual(first);
    expect(Buffer.from(first).toString("latin1")).not.toMatch(/20(2[3-9]|[3-9]\d)/);
  });

  it("never puts another letter for one that it lacks", async () => {
    await expect(pdfBytes([page("12µ UP")], "a")).rejects.toThrow(LacksLetterError);
    await expect(pdfBytes([page("12µ UP")], "a")).rejects.toThrow(/no "µ" \(in "12µ UP"\)/);
  });

  it("letters the signs of tolerances, degrees and diameters, as letters that can be copied", async () => {
    const text = Buffer.from(await pdfBytes([page("Ø8 ±0.1 (12°)")], "a")).toString("latin1");
    expect(text).toContain("(\\3308 \\2610.1 \\(12\\260\\)) Tj");
    for (const code of [0xd8, 0xb1, 0xb0]) expect(text).toContain(`/l${code} `);
  });

  it("keeps cubics within 0.002 mm of every arc", () => {
    let most = 0;
    for (const radius of [0.3, 1, 8, 42, 250, 1200, 20_000]) {
      for (const sweep of [0.001, 0.05, 0.7, 1.6, -2.4, Math.PI]) {
        const [x, y] = [radius * Math.cos(1 + sweep), radius * Math.sin(1 + sweep)];
        const from = { x: radius * Math.cos(1), y: radius * Math.sin(1) };
        const arc = segmentBetween(from, { x, y }, Math.tan(sweep / 4)) as Arc;
        let start = from;
        for (const [b, c, end] of arcCubics(arc)) {
          for (let i = 0; i <= 40; i++) {
            const t = i / 40;
            const at = (axis: "x" | "y") =>
              (1 - t) ** 3 * start[axis] +
              3 * t * (1 - t) ** 2 * b[axis] +
              3 * t * t * (1 - t) * c[axis] +
              t ** 3 * end[axis];
            most = Math.max(most, Math.abs(Math.hypot(at("x"), at("y")) - radius));
          }
          start = end;
        }
        expect(Math.hypot(start.x - x, start.y - y)).toBeLessThan(1e-9);
      }
    }
    expect(most).toBeLessThan(0.002);
    expect(most).toBeGreaterThan(0.0001);
  });
});
