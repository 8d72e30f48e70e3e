/** The core's sides: so wide at x = `at` from the nut, mm, and running apart by `taper` degrees a side, positive toward the tail. */
export type CoreWidth = { readonly width: number; readonly at: number; readonly taper: number };

/** The core's sides as they are set: its width holds under the bridge. */
export function coreWidthOf(of: (id: string) => number): CoreWidth {
  return { width: of("core.width"), at: of("string.length"), taper: of("core.taper") };
}

/** Half the core's width at x from the nut, mm. */
export function coreHalf({ width, at, taper }: CoreWidth, x: number): number {
  return width / 2 + (x - at) * Math.tan((taper * Math.PI) / 180);
}
