/** What the reader of plots finds of one with bars. */
export type BarsRead = {
  readonly bars: readonly {
    readonly name: string;
    readonly from: number;
    readonly to: number;
    readonly says: readonly string[];
    readonly hatched: boolean;
  }[];
  readonly ranges: readonly {
    readonly name: string;
    readonly least: number;
    readonly most: number;
    readonly says: readonly string[];
  }[];
};

/** What it finds of one string's heights, mm. */
export type Panel = {
  readonly name: string;
  readonly hollow: number;
  readonly length: number;
  readonly board: number;
  readonly nut: number;
  readonly bridge: number;
  readonly end: number;
  readonly middle: { readonly x: number; readonly string: number; readonly board: number };
  readonly frets: readonly (readonly [x: number, high: number])[];
  readonly says: readonly number[];
};

type Line = {
  readonly says: string;
  readonly degrees: number;
  readonly falls: "left" | "right";
  readonly touches: readonly string[];
  readonly dashed: boolean;
};

/** What it finds of the bow's plot; degrees, places in mm on paper. */
export type BowRead = {
  readonly unreadable?: string;
  readonly scale: number;
  readonly rings: readonly { readonly name: string; readonly x: number; readonly y: number }[];
  readonly lines: readonly Line[];
  readonly ranges: readonly {
    readonly name: string;
    readonly degrees: number;
    readonly says: readonly string[];
  }[];
};

/** Where lines, arcs and numbers of a bow's plot tell different things, in words. */
export function differences({ lines, ranges }: BowRead): string[] {
  const number = (text: string) => Number(/([\d.]+)°$/.exec(text)?.[1]);
  return [
    ...lines.flatMap(({ says, degrees, touches }) => [
      ...(Math.abs(number(says) - degrees) < 0.0501 ? [] : [`${says} is drawn at ${degrees}`]),
      ...(says.startsWith(`${touches.join(", ")} `) ? [] : [`${says} touches ${touches}`]),
    ]),
    ...ranges.flatMap(({ name, degrees, says }) => {
      const told = says.length === 1 && Math.abs(number(says[0]!) - degrees) < 0.0501;
      return told ? [] : [`${name} says ${says} and is drawn ${degrees} wide`];
    }),
  ];
}
