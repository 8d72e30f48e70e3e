import { circle } from "../../geometry/circle.ts";
import type { Kept } from "./fixture.ts";
import { handDistances } from "./hand-distances.ts";
import { type Holding, sweptMargin } from "./holding.ts";

/** Everything of what holds the work that the cutter must not come near, each with its margin; clamps keep off a router's base too, `past` the cutter, mm. */
export function keptOf({ batten, clamps, handholds, holes }: Holding, past: number): Kept[] {
  const near = sweptMargin;
  return [
    ...(batten === null ? [] : [{ id: "batten", what: "stop" as const, path: batten, margin: near }]),
    ...clamps.flatMap(({ base, arm }, i): Kept[] => [
      { id: `clamp ${i + 1}`, what: "clamp", path: base, margin: near + past },
      { id: `arm of clamp ${i + 1}`, what: "clamp", path: arm, margin: near + past },
    ]),
    ...holes
      .filter(({ what }) => what.startsWith("index pin"))
      .map(
        ({ at, diameter, what }): Kept => ({
          ...{ id: what, what: "pin", path: circle(at, diameter / 2), margin: near },
        }),
      ),
    ...holes
      .filter(({ what }) => screwed.includes(what))
      .map(
        ({ at, diameter, what }, i): Kept => ({
          ...{ id: `${what} ${i + 1}`, what: "screw", path: circle(at, diameter / 2), margin: near },
        }),
      ),
    ...handholds.map(
      ({ path }, i): Kept => ({
        ...{ id: `handhold ${i + 1}`, what: "handhold", path, margin: handDistances.usual },
      }),
    ),
  ];
}

/** Holes of what screws the work down. */
const screwed: readonly string[] = ["screw", "bolt"];
