/**
 * What is left between two things that must not meet, mm: negative where they do. `between` names them; `mend` says which
 * dimension to move and to what number, `ids` are those that it follows from.
 */
export type Wall = {
  readonly left: number;
  readonly between: string;
  readonly ids: readonly string[];
  readonly mend: string;
};

/** The thinnest of some walls; at least one must be there. */
export function thinnest(walls: readonly Wall[]): Wall {
  return walls.reduce((least, wall) => (wall.left < least.left ? wall : least));
}

/** Tells to lower a dimension to a number, mm, rounded so that it is low enough. */
export function lowerTo(id: string, to: number): string {
  return `lower ${id} to ${Math.floor(to * 100 + 1e-6) / 100} mm`;
}

/** Tells to raise a dimension to a number, mm, rounded so that it is high enough. */
export function raiseTo(id: string, to: number): string {
  return `raise ${id} to ${Math.ceil(to * 100 - 1e-6) / 100} mm`;
}

/**
 * The greatest number from `low` to `high` at which something that holds at low numbers still holds, within a thousandth of
 * their distance or better; `low` itself where it holds nowhere.
 */
export function greatest(low: number, high: number, holds: (value: number) => boolean): number {
  let [yes, no] = [low, high];
  for (let i = 0; i < 20; i++) {
    const middle = (yes + no) / 2;
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}
