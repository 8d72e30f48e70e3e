/** Between which tilts of the bow: degrees of its line from level, positive where it falls to the treble side. */
export type Tilts = { readonly bass: number; readonly treble: number };

/**
 * The crown as a circle and the strings' centres in the plane across the bridge, y to the treble side, mm; highest string first.
 * An inner string's `range` is the angle between the tilts at which the bow touches it alone; an outer string has none.
 */
export type BowAnglesPlotInput = {
  readonly hand: "right" | "left";
  readonly crown: { readonly y: number; readonly z: number; readonly radius: number };
  readonly strings: readonly {
    readonly name: string;
    readonly y: number;
    readonly z: number;
    readonly range: { readonly angle: number; readonly tilt: Tilts } | null;
  }[];
  readonly outermost: Tilts;
};
