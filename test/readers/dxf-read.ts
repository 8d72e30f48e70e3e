/** One path of a DXF as it was read; mm and mm². */
export type Row = {
  readonly type: string;
  readonly layer: string;
  readonly closed: boolean;
  readonly colour: number;
  readonly bulges: readonly number[];
  readonly area?: number;
  readonly valid?: boolean;
  readonly points?: readonly (readonly number[])[];
  readonly bounds?: readonly [number, number, number, number];
};

/** One DXF as it was read, with what was wrong with it and what had to be mended. */
export type Read = {
  readonly errors: readonly string[];
  readonly fixes: readonly string[];
  readonly units: number;
  readonly measurement: number;
  readonly extents: readonly [readonly number[], readonly number[]];
  readonly paths: readonly Row[];
  readonly texts: readonly { readonly text: string; readonly height: number; readonly layer: string }[];
  readonly widths: Readonly<Record<string, number>>;
};
