import { step } from "../../step/step.ts";

/** All in mm. */
export type TaperInput = {
  readonly stringLength: number;
  readonly boardLength: number;
  readonly nutSpread: number;
  readonly bridgeSpread: number;
  readonly nutMargin: number;
  readonly endMargin: number;
};

/** A board whose edges run straight: its length and its width at either end, mm. */
export type Taper = { readonly length: number; readonly nut: number; readonly end: number };

/** The board's width from the outer strings' lines and the margins outside them. */
export const boardTaper = step("fingerboard.taper", 1, (given: TaperInput): Taper => {
  const { stringLength, boardLength, nutSpread, bridgeSpread, nutMargin, endMargin } = given;
  const endSpread = nutSpread + ((bridgeSpread - nutSpread) * boardLength) / stringLength;
  return { length: boardLength, nut: nutSpread + 2 * nutMargin, end: endSpread + 2 * endMargin };
});

/** The board's width at x from the nut, mm. */
export function boardWidth(taper: Taper, x: number): number {
  return taper.nut + ((taper.end - taper.nut) * x) / taper.length;
}
