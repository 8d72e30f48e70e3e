import type { Point } from "../../../geometry/point.ts";
import type { Inside, Opening } from "../../../workshop/inside/inside.ts";
import { inMm } from "../../../workshop/sequence/work-step.ts";
import { inCapitals } from "../bench/in-capitals.ts";
import type { Way } from "./guided-picture.ts";
import type { InsidePicture, ShownOpening } from "./inside-picture.ts";

/** How long arrows are, mm: recesses are small. */
const arrowLength = 10;

/** An inside template with all that was worked out of it. */
export type MadeInside = Inside & {
  readonly setUp: NonNullable<Inside["setUp"]>;
  readonly layout: NonNullable<Inside["layout"]>;
  readonly plates: NonNullable<Inside["plates"]>;
};

/** Whether an inside template has a set-up and its plates laid out: without them there is nothing to draw. */
export function isMadeInside(inside: Inside): inside is MadeInside {
  return inside.setUp !== null && inside.layout !== null && inside.plates !== null;
}

/** The picture of an inside template's set-up: all its openings, whichever plate each is on. */
export function insidePictureOf(inside: MadeInside): InsidePicture {
  const { setUp, layout, under, openings, plates } = inside;
  return {
    ...{ plate: layout.plate, under, cutter: setUp.cutter.diameter, guide: setUp.guide.diameter },
    openings: openings.flatMap((opening, i) => shown(opening, plates[i]!, Math.max(...plates) + 1)),
    clamps: layout.clamps.map(({ id, base, arm }) => ({ path: base, arm, name: `CLAMP ${inCapitals(id)}` })),
    handholds: layout.handholds.map(({ path }, i) => ({ path, name: handName(openings, i) })),
    holes: layout.holes
      .filter(({ what }) => what !== "handhold")
      .map(({ at, diameter, what }) => ({ at, diameter, name: inCapitals(what) })),
  };
}

function shown({ id, edge, recess, feed }: Opening, plate: number, plates: number): ShownOpening[] {
  if (edge?.kind !== "ok" || feed === null) return [];
  const on = plates === 1 ? "" : `, PLATE ${plate + 1}`;
  return [
    {
      ...{ name: `${inCapitals(id)}${on}`, edge: edge.edge, recess, plunge: edge.plunge.at },
      tool: feed.tool.map(({ at, way }) => lineAt(at, way)),
    },
  ];
}

function lineAt({ x, y }: Point, way: Point): Way {
  const [dx, dy] = [(way.x * arrowLength) / 2, (way.y * arrowLength) / 2];
  return { from: { x: x - dx, y: y - dy }, to: { x: x + dx, y: y + dy } };
}

/** How far a handhold stays from the cutter in every opening, as the virtual cuts found it. */
function handName(openings: readonly Opening[], i: number): string {
  const gaps = openings.flatMap(({ cut }) =>
    cut?.kind === "ok" ? cut.kept.flatMap(({ id, gap }) => (id === `handhold ${i + 1}` ? [gap] : [])) : [],
  );
  return gaps.length === 0 ? "HANDHOLD" : `HANDHOLD, ${inMm(Math.min(...gaps))} FROM THE CUTTER`;
}
