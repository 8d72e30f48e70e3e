import { lettered } from "../../../order/lettering.ts";

/** A text as bench sheets letter it: capitals, and only letters that the lettering has; one that has no plain spelling is left out by a space. */
export function inCapitals(text: string): string {
  return (lettered(text) ?? text.replace(/[^ -~]/g, " ")).toUpperCase();
}
