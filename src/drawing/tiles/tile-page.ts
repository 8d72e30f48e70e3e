import type { Box, Marks } from "../sheet/sheet.ts";

/**
 * Marks of a page under one name, which a reader of the file finds them by: letters, digits, dots and hyphens. They are moved by `shift` (mm) and, with a
 * `clip`, shown inside that box of the page alone.
 */
export type MarkGroup = {
  readonly name: string;
  readonly marks: Marks;
  readonly shift: { readonly x: number; readonly y: number };
  readonly clip: Box | null;
};

/**
 * A page of paper, true mm from its lower left corner, y upward. `scale` is how long what should measure 1 comes out of the printer,
 * across and up: whoever writes the page divides by it.
 */
export type Page = {
  readonly paper: { readonly id: string; readonly width: number; readonly height: number };
  readonly scale: readonly [x: number, y: number];
  readonly groups: readonly MarkGroup[];
};
