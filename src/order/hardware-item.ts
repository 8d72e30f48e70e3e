/** What bought hardware does. */
export const hardwareKinds = ["pickup", "preamplifier", "battery", "jack", "control", "endpin"] as const;

/** A part of it that goes through wood: the hole that it wants and the most wood that it reaches through, mm. */
export type GoesThrough = { readonly hole: number; readonly reach: number };

/**
 * A bought item's body as it lies in its recess, mm, and its mass, g: `shaft` goes square through the face opposite to the one that it goes in
 * by, `thread` through a wall in the plane of the part.
 */
export type HardwareItem = {
  readonly item: string;
  readonly kind: (typeof hardwareKinds)[number];
  readonly body:
    | { readonly shape: "box"; readonly length: number; readonly width: number }
    | { readonly shape: "round"; readonly diameter: number };
  readonly depth: number;
  readonly mass: number;
  readonly shaft: GoesThrough | null;
  readonly thread: GoesThrough | null;
};
