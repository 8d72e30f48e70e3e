import { rectangleOf } from "../../geometry/rectangle.ts";
import type { Voice } from "../../order/voice.ts";
import { lettering } from "../sheet/lettering.ts";
import { type Sheet, type SheetText, together } from "../sheet/sheet.ts";
import { lineStep } from "../sheet/sheet-frame.ts";

/** Whose a plot is, and what it shows. */
export type PlotTitle = {
  readonly heading: string;
  readonly order: string;
  readonly voice: Voice;
  readonly count: number;
  readonly hand: "right" | "left";
  readonly fingerprint: string;
};

const pad = 3;

/** A plot with its frame and its title: what it shows, the order, voice, count and hand, and the plot's fingerprint. */
export function titledPlot(plot: Sheet, title: PlotTitle): Sheet {
  const { frame, titleBox } = plot;
  const { heading, order, voice, count, hand, fingerprint } = title;
  const words = [
    heading,
    `ORDER ${order}`,
    `${voice.toUpperCase()}, ${count} STRINGS   ${hand.toUpperCase()} HAND   FINGERPRINT ${fingerprint}`,
  ];
  const texts = words.map((text, i): SheetText => {
    const y = titleBox.maxY - 2 - lineStep * (i + 0.75);
    return {
      ...{ text, x: titleBox.minX + pad, y, turn: 0, align: "left" },
      height: i === 0 ? lettering.title : lettering.height,
    };
  });
  const lines = [frame, titleBox].map((box) => ({ weight: "frame" as const, path: rectangleOf(box) }));
  return { ...plot, ...together([plot, { lines, texts }]) };
}
