import { boardWidth, type Taper } from "./taper.ts";

/**
 * A board's playing surface; lengths in mm. `radius` is that of every section of a cylinder, and of a cone's at the board's end.
 * `edge` is the board's thickness at its edges, at the nut and at its end. `spread` is how far apart the outer strings' centres
 * lie there. `scoop` is the gap under a straightedge along the highest and the lowest string, at the board's mid-length.
 */
export type BoardSurface = {
  readonly kind: "cylinder" | "cone";
  readonly taper: Taper;
  readonly radius: number;
  readonly edge: number;
  readonly spread: { readonly nut: number; readonly end: number };
  readonly scoop: { readonly high: number; readonly low: number };
};

/** A section of the playing surface: the arc of a circle in the plane across the board, y to the treble side; mm. */
export type BoardArc = { readonly y: number; readonly z: number; readonly radius: number };

/**
 * The section at x from the nut. At the nut and at the end its edges are as thick as set. Between, the board runs straight under
 * the two outer strings but for the scoop, a parabola deepest at mid-length; so radius and scoop hold, and the edge gives way.
 * On a cone the radius grows with the strings' spread, R(x) = Re S(x) / Se, and the other strings lie over straight lines
 * too; on a cylinder they don't quite.
 *
 * A radius of no more than half the board's width gives numbers that are none.
 */
export function boardArc(surface: BoardSurface, x: number): BoardArc {
  const { taper, spread, scoop } = surface;
  const t = x / taper.length;
  const radius = boardRadius(surface, x);
  const half = boardSpread(surface, x) / 2;
  const straight =
    underOuter(surface, 0, spread.nut) * (1 - t) + underOuter(surface, taper.length, spread.end) * t;
  const hollow = 4 * t * (1 - t);
  const [high, low] = [straight - hollow * scoop.high, straight - hollow * scoop.low];
  const rise = (high - low) / 2;
  const chord = Math.hypot(half, rise);
  const down = Math.sqrt(radius ** 2 - chord ** 2);
  return { y: (rise / chord) * down, z: (high + low) / 2 - (half / chord) * down, radius };
}

/** The radius across the surface at x from the nut, mm. */
export function boardRadius({ kind, radius, spread, ...surface }: BoardSurface, x: number): number {
  return kind === "cylinder" ? radius : (radius * boardSpread({ ...surface, spread }, x)) / spread.end;
}

/** How far apart the outer strings' centres lie at x from the nut, mm. */
export function boardSpread({ taper, spread }: Pick<BoardSurface, "taper" | "spread">, x: number): number {
  return spread.nut + ((spread.end - spread.nut) * x) / taper.length;
}

/** The surface's height under the outer strings where its edges are as thick as set. */
function underOuter(surface: BoardSurface, x: number, spread: number): number {
  const radius = boardRadius(surface, x);
  const half = boardWidth(surface.taper, x) / 2;
  return surface.edge + Math.sqrt(radius ** 2 - (spread / 2) ** 2) - Math.sqrt(radius ** 2 - half ** 2);
}

/** The height of the playing surface over the surface that the board is glued to, mm, at x from the nut and y across. */
export function boardTop(surface: BoardSurface, x: number, y: number): number {
  const arc = boardArc(surface, x);
  return arc.z + Math.sqrt(arc.radius ** 2 - (y - arc.y) ** 2);
}
