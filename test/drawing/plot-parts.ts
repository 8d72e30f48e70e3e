import { type PlotTitle, titledPlot } from "../../src/drawing/plot/titled-plot.ts";
import { boxOf, textBox } from "../../src/drawing/sheet/lettering.ts";
import type { Sheet } from "../../src/drawing/sheet/sheet.ts";
import { grown } from "../../src/geometry/extents/grown.ts";
import { overlap } from "../../src/geometry/extents/overlap.ts";

const title: PlotTitle = {
  ...{ heading: "H", order: "a".repeat(64), count: 7, fingerprint: "0123456789ab" },
  ...{ voice: "violin", hand: "right" },
};

/** Pairs of texts nearer each other than half a millimetre, and texts or lines outside the frame, counted by their boxes. */
export function crowded(plot: Sheet): {
  readonly pairs: number;
  readonly outside: number;
  readonly texts: number;
} {
  const whole = titledPlot(plot, title);
  const boxes = whole.texts.map(textBox);
  const pairs = boxes.flatMap((box, i) =>
    boxes.slice(i + 1).filter((other) => overlap(grown(box, 0.4), other)),
  );
  const { minX, minY, maxX, maxY } = whole.frame;
  const out = [...boxes, boxOf(whole)].filter((box) => {
    return (
      box.minX < minX - 1e-9 || box.maxX > maxX + 1e-9 || box.minY < minY - 1e-9 || box.maxY > maxY + 1e-9
    );
  });
  return { pairs: pairs.length, outside: out.length, texts: boxes.length };
}
