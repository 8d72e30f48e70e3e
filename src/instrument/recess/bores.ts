import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { Frame } from "../../geometry/solid/frame.ts";
import { between, dot, lengthOf, type Vec3 } from "../../geometry/solid/vec3.ts";
import { windingsOf } from "../../geometry/winding-at.ts";
import type { RecessPart } from "../../order/recess-part.ts";
import type { SpecBore } from "../../order/spec.ts";
import { alongBore, type Drilled } from "../drilled.ts";
import { into, outOf } from "./axes.ts";
import type { Ground } from "./ground.ts";
import { floorOf, openOf, opens } from "./heights.ts";
import type { MadeRecess } from "./recess.ts";

/** A part of the instrument that a bore may run through. */
export type Bored = { readonly axes: Frame; readonly ground: Ground };

/** Where wires leave the bridge: the middle of its foot on the core's front, and the cradle under it, so deep; mm. */
export type UnderFoot = { readonly x: number; readonly depth: number };

/**
 * A wire's bore with what it takes out of each part; or which recess it misses, how high over that one's floor it comes there (none where it isn't over it
 * at all), and between which heights it would meet it.
 */
export type WireBore =
  | {
      readonly kind: "ok";
      readonly id: string;
      readonly drilled: readonly { readonly part: RecessPart; readonly bore: Drilled }[];
      readonly between: readonly string[];
      readonly length: number;
    }
  | {
      readonly kind: "misses";
      readonly id: string;
      readonly recess: string;
      readonly height: number | null;
      readonly room: readonly [low: number, high: number];
    };

/** How far a drill stands out of a face that it enters square, mm. */
const clear = 1;

/**
 * The bore of a wire, straight from the middle of one recess to that of another: in one part in its plane, so high over the floor that it leads to, from part
 * to part so high over either floor. From under the bridge to a recess of the neck it runs square from the core's front; to any other straight from the
 * cradle's floor, or from the front.
 */
export function wireBore(
  bore: SpecBore,
  recesses: readonly MadeRecess[],
  parts: { readonly [part in RecessPart]?: Bored },
  foot: UnderFoot,
): WireBore {
  const ends = [bore.from, bore.to].flatMap((id) => recesses.filter((one) => one.id === id));
  const last = ends.at(-1)!;
  const square = bore.from === "bridge" && last.part === "neck";
  const start = { x: foot.x, y: 0, z: -foot.depth };
  // In one part it runs level, in its plane.
  const level = ends.every(({ part }) => part === last.part);
  const middle = (recess: MadeRecess): Vec3 => {
    const { axes, ground } = parts[recess.part]!;
    const over = level ? last : recess;
    const height = over === last ? bore.height : bore.begins;
    const z = floorOf(over, ground.thickness) + opens(over) * height;
    return outOf(axes, { x: recess.at.x, y: recess.at.y, z });
  };
  if (square) return squareBore(bore, last, parts.neck!, foot);
  const [from, to] = [bore.from === "bridge" ? start : middle(ends[0]!), middle(last)];
  for (const recess of ends) {
    const missed = misses(bore, recess, parts[recess.part]!, { from, to });
    if (missed !== undefined) return missed;
  }
  // Of one from the bridge the drill stands out over the floor that it enters aslant.
  const out = bore.from === "bridge" ? 1.5 * bore.size : 0;
  const begun = alongBore({ from, to }, -out);
  const drilled = Object.entries(parts).flatMap(([name, { axes, ground }]) => {
    const own = { id: bore.id, diameter: bore.size, from: into(axes, begun), to: into(axes, to) };
    const within = ends.filter(({ part }) => part === name);
    const wood = stretchesIn(own, ground, within, out);
    return wood.length === 0 ? [] : [{ part: name as RecessPart, bore: { ...own, wood } }];
  });
  return {
    ...{ kind: "ok", id: bore.id, drilled, between: [bore.from, bore.to] },
    length: drilled.reduce(
      (sum, { bore: { wood } }) => sum + wood.reduce((all, [a, b]) => all + b - a, 0),
      0,
    ),
  };
}

function squareBore({ id, size }: SpecBore, to: MadeRecess, { ground }: Bored, foot: UnderFoot): WireBore {
  const floor = floorOf(to, ground.thickness);
  const radius = size / 2;
  const places = [0, 1, 2, 3, 4, 5, 6, 7].map((i) => ({
    x: foot.x + radius * Math.cos((i * Math.PI) / 4),
    y: radius * Math.sin((i * Math.PI) / 4),
  }));
  if (to.from === "front" || !places.every(insideOf(to.path)))
    return { kind: "misses", id, recess: to.id, height: null, room: [0, 0] };
  const [from, end] = [
    { x: foot.x, y: 0, z: clear },
    { x: foot.x, y: 0, z: floor - clear },
  ];
  const wood = [[clear + foot.depth, clear - floor] as const];
  const bore: Drilled = { id, diameter: size, from, to: end, wood };
  return {
    ...{ kind: "ok", id, drilled: [{ part: "neck", bore }], between: ["bridge", to.id] },
    length: -floor - foot.depth,
  };
}

/** A bore that isn't within the open wall of a recess where it comes through that. */
function misses(
  { id, size }: SpecBore,
  recess: MadeRecess,
  { axes, ground }: Bored,
  axis: Pick<Drilled, "from" | "to">,
): WireBore | undefined {
  const own = { from: into(axes, axis.from), to: into(axes, axis.to) };
  const whole = lengthOf(between(own.from, own.to));
  const within = insideOf(recess.path);
  const inside = (way: number) => within(alongBore(own, way));
  const crossings = changes(inside, whole);
  const floor = floorOf(recess, ground.thickness);
  const room = [size / 2, openOf(recess) - size / 2] as const;
  const heights = [...crossings, inside(0) ? 0 : whole].map(
    (way) => opens(recess) * (alongBore(own, way).z - floor),
  );
  const missed = heights.find((height) => height < room[0] - 1e-6 || height > room[1] + 1e-6);
  return missed === undefined ? undefined : { kind: "misses", id, recess: recess.id, height: missed, room };
}

/** The stretches of a bore that run through a part's wood, from `least` on. */
function stretchesIn(
  bore: Omit<Drilled, "wood">,
  { joint, outline, uprights }: Ground,
  recesses: readonly MadeRecess[],
  least: number,
): (readonly [number, number])[] {
  const room = uprights.filter(({ what }) => what === "the core's room");
  const ends = insideOf(outline);
  const taken = [...recesses, ...room].map(({ path }) => insideOf(path));
  const inWood = (way: number): boolean => {
    if (way < least) return false;
    const at = alongBore(bore, way);
    if (joint !== null ? dot(joint, at) < 0 : !ends(at)) return false;
    return taken.every((inside) => !inside(at));
  };
  const whole = lengthOf(between(bore.from, bore.to));
  const ways = [0, ...(least > 0 ? [least] : []), ...changes(inWood, whole), whole].sort((a, b) => a - b);
  return ways
    .slice(1)
    .map((end, i) => [ways[i]!, end] as const)
    .filter(([from, to]) => to - from > 1e-6 && inWood((from + to) / 2));
}

/** In how many steps something is looked at all along a bore. */
const steps = 120;

/** The ways along a bore at which something begins or ceases to hold. */
function changes(holds: (way: number) => boolean, whole: number): number[] {
  const found: number[] = [];
  for (let i = 0; i < steps; i++) {
    let [a, b] = [(i / steps) * whole, ((i + 1) / steps) * whole];
    const before = holds(a);
    if (holds(b) === before) continue;
    while (b - a > 1e-8) {
      const middle = (a + b) / 2;
      if (holds(middle) === before) a = middle;
      else b = middle;
    }
    found.push((a + b) / 2);
  }
  return found;
}

/** Whether places lie inside a closed path. */
function insideOf(path: Path): (place: Point) => boolean {
  const windings = windingsOf([path]);
  return (place) => windings(place) % 2 !== 0;
}
