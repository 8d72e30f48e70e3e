import type { Path } from "../../geometry/path.ts";
import { ordinatesAt } from "../../geometry/path-measures/ordinates-at.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import type { Pin } from "../../instrument/neck/pins.ts";
import type { Rod } from "../../instrument/neck/rods.ts";
import type { BlankPlace } from "../blank-place.ts";
import { holdDownEvery } from "./holding.ts";

/** What a neck's hold-downs follow from, mm: its blank, its side, its pins and rods' channels, and where the core begins. */
export type NeckHoldsInput = {
  readonly place: Pick<BlankPlace, "minZ" | "maxZ">;
  readonly side: Path;
  readonly pins: readonly Pin[];
  readonly rods: readonly Pick<Rod, "y" | "width" | "start" | "length">[];
  readonly core: number;
};

/** A neck's screws: their diameter, how deep they go into the blank at most, and what of the neck stays over their points, mm (G: default, confirm). */
export const neckScrews = { diameter: 5, into: 10, over: 4 } as const;

/** How far beside a pin in the waste a screw stands, and beside the centreline elsewhere, mm; how far from its best place along the neck it may stand. */
const beside = { pin: [12, 10, 14], line: [0, 7, -7, 9, -9, 13, -13, 16, -16] } as const;
const within = 60;

/**
 * Where a neck on its blank may be screwed down, front up or back up alike, as places along it and from the centreline, positive away from the
 * edge that is cut: in the waste beside the pins at both ends, in the footprint under the board near the core, and in waste
 * over core or neck wherever it is farther than 300 from one to the next. Each list is one hold-down, its best place first.
 */
export function neckHolds({ place, side, pins, rods, core }: NeckHoldsInput): readonly (readonly Point[])[] {
  const edges = segmentsOf(side);
  const inWaste = pins.filter(({ depth }) => depth === "through").map(({ x }) => x);
  const [head, tail] = [Math.min(...inWaste), Math.max(...inWaste)];
  const holds = (x: number) => {
    const around = ordinatesAt(edges, x);
    const [back, front] = [around[0], around.at(-1)];
    if (back === undefined || front === undefined) return false;
    const { into, over } = neckScrews;
    // Under the board a hole stays in the neck; elsewhere all that it enters is sawn away later.
    const inFront = x < core ? place.maxZ - back - over : place.maxZ - front - 1;
    return inFront >= into && back - place.minZ - 1 >= into;
  };
  const free = ({ x, y }: Point) => [y, -y].every((at) => isClear({ x, y: at }, pins, rods));
  const near = (best: number, least: number, most: number): Point[] =>
    Array.from({ length: (2 * within) / 4 + 1 }, (_, i) => best + (i % 2 === 0 ? 2 * i : -2 * (i + 1)))
      .filter((x) => x >= least && x <= most && holds(x))
      .flatMap((x) => beside.line.map((y) => ({ x, y })))
      .filter(free);
  const footprint = near(core - 4, 0, core - 4);
  const anchors = [head, ...footprint.slice(0, 1).map(({ x }) => x), tail];
  const filled = anchors.slice(1).flatMap((to, i) => {
    const from = anchors[i]!;
    const count = Math.ceil((to - from) / holdDownEvery) - 1;
    return Array.from({ length: count }, (_, k) =>
      near(from + ((to - from) * (k + 1)) / (count + 1), from + 40, to - 40),
    );
  });
  const atEnd = (x: number) => [...beside.pin, ...beside.pin.map((y) => -y)].map((y) => ({ x, y }));
  return [atEnd(head), footprint, atEnd(tail), ...filled];
}

/** Whether a screw keeps off pins and channels that are sunk into the front. */
function isClear({ x, y }: Point, pins: NeckHoldsInput["pins"], rods: NeckHoldsInput["rods"]): boolean {
  const room = neckScrews.diameter / 2 + 2;
  const offPins = pins.every((pin) => Math.hypot(pin.x - x, pin.y - y) >= room + pin.diameter / 2);
  const offRods = rods.every(
    (rod) =>
      Math.abs(rod.y - y) >= room + rod.width / 2 ||
      x <= rod.start - room ||
      x >= rod.start + rod.length + room,
  );
  return offPins && offRods;
}
