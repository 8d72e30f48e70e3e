import { circle } from "../../geometry/circle.ts";
import type { Kept } from "../guided/fixture.ts";
import { handDistances } from "../guided/hand-distances.ts";
import { sweptMargin } from "../guided/holding.ts";
import type { PlateLayout } from "./plate-layout.ts";

/** Everything of what holds a plate that the cutter, and `past` it a router's base, must not come near, each with its margin; mm. */
export function keptOnPlate({ clamps, handholds, holes }: PlateLayout, past: number): Kept[] {
  const margin = sweptMargin + past;
  return [
    ...clamps.flatMap(({ base, arm }, i): Kept[] => [
      { id: `clamp ${i + 1}`, what: "clamp", path: base, margin },
      { id: `arm of clamp ${i + 1}`, what: "clamp", path: arm, margin },
    ]),
    ...holes
      .filter(({ what }) => what.startsWith("index pin"))
      .map(
        ({ at, diameter, what }): Kept => ({
          ...{ id: what, what: "pin", path: circle(at, diameter / 2), margin },
        }),
      ),
    ...handholds.map(
      ({ path }, i): Kept => ({
        ...{ id: `handhold ${i + 1}`, what: "handhold", path, margin: handDistances.usual },
      }),
    ),
  ];
}
