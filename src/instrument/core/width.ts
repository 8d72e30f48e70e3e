/** The core's sides: so wide at x = `at` from the nut, mm, and running apart by `taper` degrees a side, positive toward the tail. */
export type CoreWidth = { readonly width: number; readonly at: number; readonly taper: number };

/** Half the core's width at x from the nut, mm. */
export function coreHalf({ width, at, taper }: CoreWidth, x: number): number {
  return width / 2 + (x - at) * Math.tan((taper * Math.PI) / 180);
}
