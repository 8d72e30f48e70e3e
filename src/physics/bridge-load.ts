import { step } from "../step/step.ts";

/**
 * What pulls at the bridge: the core's slope, and per string, from the highest to the lowest, its tension in N, its rise to the
 * bridge and its fall after it in degrees to z = 0, how long it is on either side seen from the side, and where it lies across
 * at nut, bridge and exit; mm.
 */
export type BridgeLoadInput = {
  readonly slope: number;
  readonly strings: readonly {
    readonly tension: number;
    readonly rise: number;
    readonly fall: number;
    readonly lengths: { readonly nut: number; readonly tail: number };
    readonly across: { readonly nut: number; readonly bridge: number; readonly exit: number };
  }[];
};

/** What one string does to the bridge, N: presses on it, leans it to the tail and draws it to the treble side. */
export type StringLoad = { readonly load: number; readonly lean: number; readonly side: number };

/**
 * What all strings do together in the core frame: `load` square to the core's front, positive into it; `lean` along it, positive
 * to the tail; `side` along y, positive to the treble side; N. `nut` and `tail` are the strings' tension-weighted mean angles to
 * the core's front, degrees. `friction` is the least coefficient that keeps every string in its place along its notch. `anchor` is what
 * they do to the tailpiece, N: `pull` along the front, positive to the nut, and `lift` square out of it.
 */
export type BridgeLoad = StringLoad & {
  readonly strings: readonly StringLoad[];
  readonly nut: number;
  readonly tail: number;
  readonly friction: number;
  readonly anchor: { readonly pull: number; readonly lift: number };
};

/**
 * The strings' load on the bridge, from their angles a and b to the core's front on the nut's and the tail's side, seen from the
 * side: load = T (sin a + sin b), lean = T (cos b - cos a); and likewise along y, side = T (sin p + sin q), from their angles p
 * and q to the centreline, seen square to the core's front.
 *
 * Each view ignores what the other shows, so a string that splays by 4 degrees loads the bridge by a quarter of a per cent less.
 *
 * The friction is the greatest ratio of lean to load of any string, tan((b - a) / 2), with the notch's floor taken as parallel to
 * the core's front. It is no capstan's: that would ask for a difference in tension between the two sides, and at rest there is
 * none. A notch rounded to the string's own bend needs less.
 */
export const bridgeLoad = step(
  "physics.bridge-load",
  1,
  ({ slope, strings }: BridgeLoadInput): BridgeLoad => {
    const pulls = strings.map(({ tension, rise, fall, lengths, across }) => {
      const [a, b] = [radians(rise + slope), radians(fall - slope)];
      const p = Math.atan2(across.nut - across.bridge, lengths.nut * Math.cos(a));
      const q = Math.atan2(across.exit - across.bridge, lengths.tail * Math.cos(b));
      return {
        load: tension * (Math.sin(a) + Math.sin(b)),
        lean: tension * (Math.cos(b) - Math.cos(a)),
        side: tension * (Math.sin(p) + Math.sin(q)),
        anchor: { pull: tension * Math.cos(b), lift: tension * Math.sin(b) },
      };
    });
    const total = strings.reduce((sum, { tension }) => sum + tension, 0);
    const mean = (angle: (string: BridgeLoadInput["strings"][number]) => number) =>
      strings.reduce((sum, string) => sum + string.tension * angle(string), 0) / total;
    const sum = (of: (pull: (typeof pulls)[number]) => number) =>
      pulls.reduce((so, pull) => so + of(pull), 0);
    return {
      strings: pulls.map(({ load, lean, side }) => ({ load, lean, side })),
      ...{ load: sum(({ load }) => load), lean: sum(({ lean }) => lean), side: sum(({ side }) => side) },
      ...{ nut: mean(({ rise }) => rise) + slope, tail: mean(({ fall }) => fall) - slope },
      friction: Math.max(...pulls.map(({ load, lean }) => Math.abs(lean) / load)),
      anchor: { pull: sum(({ anchor }) => anchor.pull), lift: sum(({ anchor }) => anchor.lift) },
    };
  },
);

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
