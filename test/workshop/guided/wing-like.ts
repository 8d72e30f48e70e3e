import fc from "fast-check";
import type { Path } from "../../../src/geometry/path.ts";
import { ringOf } from "../../../src/instrument/ring.ts";
import type { FramePoint, SpecEdge } from "../../../src/order/spec.ts";
import { type CutRun, cutRuns } from "../../../src/workshop/guided/cut-runs.ts";

const edge = (id: string, more: Partial<SpecEdge>): SpecEdge => ({
  ...{ id, to: null, through: [], follows: null, corner: 0, joined: null },
  ...more,
});

/** An outline as a wing has it: a straight joint from [0, 0], then a tail, a rim through places and a head, all cut; mm. */
export function wingLike(
  joint: FramePoint,
  tail: FramePoint,
  through: readonly FramePoint[],
  head: FramePoint,
  corner: number,
): { readonly outline: Path; readonly run: CutRun } | undefined {
  const edges = [
    edge("joint", { to: joint, joined: "neck" }),
    edge("tail", { to: tail, corner }),
    edge("rim", { through, to: head, corner }),
    edge("head", { to: [0, 0] }),
  ];
  const ring = ringOf({ along: joint[0], out: 60, edges, holes: [] }, {});
  if (ring.kind !== "ok") return undefined;
  const uses = ring.path.points.map((_, i) => (i === 0 ? ("joined" as const) : ("cut" as const)));
  return { outline: ring.path, run: cutRuns(ring.path, uses)[0]! };
}

/** Random ones: rims that wave, so that some have hollows, tight corners, or places that no cutter gets into. */
export const wingLikes = fc
  .record({
    length: fc.integer({ min: 100, max: 280 }),
    fall: fc.integer({ min: -12, max: 12 }),
    outs: fc.array(fc.integer({ min: 18, max: 70 }), { minLength: 1, maxLength: 6 }),
    corner: fc.constantFrom(0, 2, 4.5, 6, 10),
    lean: fc.integer({ min: -6, max: 6 }),
    pair: fc.constantFrom(
      ...([
        [8, 16],
        [8, 18],
        [8, 8],
        [12.68, 12.68],
        [12.68, 8],
        [19.05, 19.05],
        [19.05, 12.68],
      ] as const),
      ...([
        [19.05, 27.05],
        [60, 60],
        [60, 70],
        [60, 40],
        [100, 80],
        [100, 100],
        [30, 40],
      ] as const),
    ),
  })
  .map(({ length, fall, outs, corner, lean, pair: [cutter, guide] }) => {
    const through = outs.map((out, i): FramePoint => [(length * (outs.length - i)) / (outs.length + 1), out]);
    const made = wingLike([length, fall], [length + lean, 24], through, [0 - lean, 14], corner);
    return made === undefined ? undefined : { ...made, cutter, guide };
  })
  .filter((made) => made !== undefined);
