import type { Weight } from "../drawing/sheet/sheet.ts";

/** Each meaning's pen: width in mm and dashes; colour carries no meaning, so that black and white tells the same. */
export const pens: { readonly [weight in Weight]: { readonly width: number; readonly dash: string } } = {
  outline: { width: 0.5, dash: "" },
  cut: { width: 0.6, dash: "" },
  edge: { width: 0.3, dash: "" },
  hidden: { width: 0.25, dash: "2 0.8" },
  centre: { width: 0.18, dash: "6 1.2 1.2 1.2" },
  hatch: { width: 0.13, dash: "" },
  reference: { width: 0.18, dash: "4 1 0.8 1 0.8 1" },
  dimension: { width: 0.18, dash: "" },
  extension: { width: 0.18, dash: "" },
  arrow: { width: 0.1, dash: "" },
  station: { width: 0.7, dash: "" },
  frame: { width: 0.5, dash: "" },
  axis: { width: 0.25, dash: "" },
  bar: { width: 0.5, dash: "" },
  range: { width: 0.7, dash: "" },
  curve: { width: 0.5, dash: "" },
};
