import { numberText } from "./number-text.ts";

/** An angle as it stands on a plot. */
export function degreesText(value: number): string {
  return `${numberText(value, 1)}°`;
}
