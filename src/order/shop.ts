/** Which way a spindle turns, seen from above the work, and whether the work moves past the tool or the tool over the work. */
export type Spindle = {
  readonly rotation: "ccw" | "cw";
  readonly moves: "work" | "tool";
  /** The speeds that can be set, rpm. */
  readonly speeds: readonly number[];
};

/** A bandsaw: lengths in mm, the table's tilt in degrees. */
export type Bandsaw = {
  readonly id: string;
  readonly kind: "bandsaw";
  readonly throat: number;
  readonly height: number;
  readonly tilt: readonly [least: number, most: number];
  readonly blades: readonly { readonly width: number; readonly kerf: number }[];
};

/** A shaper: `first-pass` is the most that its manual takes off at once, mm, where the shop states it. */
export type Shaper = Spindle & {
  readonly id: string;
  readonly kind: "shaper";
  readonly spindle: number;
  readonly "first-pass"?: number | undefined;
  readonly "collar-under": "allowed" | "no";
};

/** A router, however it is held; collet and base in mm. */
export type Router = Spindle & {
  readonly id: string;
  readonly kind: "router";
  readonly mount: "table" | "hand" | "overhead";
  readonly collet: number;
  readonly base?: number | undefined;
};

/** A laser, a CNC router or a printer; beds along each axis in mm. `dxf` is what its controller reads, where that is an old version alone. */
export type Plotter =
  | {
      readonly id: string;
      readonly kind: "laser";
      readonly dxf?: "r12" | undefined;
      readonly bed: readonly number[];
      readonly kerf: number;
      readonly thickest: number;
    }
  | (Spindle & {
      readonly id: string;
      readonly kind: "cnc-router";
      readonly dxf?: "r12" | undefined;
      readonly bed: readonly number[];
      readonly collet: number;
    })
  | {
      readonly id: string;
      readonly kind: "printer";
      readonly bed: readonly number[];
      readonly nozzle: number;
      readonly layer: number;
      readonly "hole-growth": number;
    };

/** A cutter, known by its measured diameter in mm and the day of measuring. */
export type Cutter = {
  readonly id: string;
  readonly fits: readonly string[];
  readonly diameter: number;
  readonly measured: string;
  readonly length: number;
  readonly "most-speed"?: number | undefined;
  readonly feed: "manual" | "mechanical";
};

/** What rides on a template, known by its measured diameter in mm and the day of measuring. */
export type Guide = {
  readonly id: string;
  readonly kind: "collar" | "bearing" | "bush" | "pin";
  readonly fits: readonly string[];
  readonly diameter: number;
  readonly measured: string;
  readonly height: number;
};

/** A board or a sheet in stock, mm; a board's length runs along its grain. */
export type Stock = {
  readonly id: string;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
};

/**
 * A paper that the shop prints on, mm, and the border that its printer can't reach. A roll has a width and no height. `scale` is how
 * long what should measure 1 came out, across the paper and along it, when the printer was measured.
 */
export type Paper = {
  readonly id: string;
  readonly width: number;
  readonly height?: number | undefined;
  readonly margin: number;
  readonly scale?: readonly [x: number, y: number] | undefined;
};

/** What one workshop owns. */
export type Shop = {
  readonly shop: string;
  readonly title: string;
  /** What lengths of reports stand in beside mm; mm alone unless it says so. */
  readonly units?: "mm" | "inch" | undefined;
  readonly machines: readonly (Bandsaw | Shaper | Router | Plotter)[];
  readonly cutters: readonly Cutter[];
  readonly guides: readonly Guide[];
  readonly clamps: readonly {
    readonly id: string;
    readonly base: readonly [number, number];
    readonly reach: number;
    readonly count: number;
  }[];
  readonly stock: {
    readonly boards: readonly (Stock & { readonly wood: string })[];
    readonly sheets: readonly (Stock & { readonly material: string })[];
  };
  readonly paper: readonly Paper[];
};
