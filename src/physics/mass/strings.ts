import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { fromCore } from "../../instrument/core/from-core.ts";
import { onHead } from "../../instrument/head/frame.ts";
import type { Instrument } from "../../instrument/instrument.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Piece } from "./piece.ts";

/** Each string as a line of its mass per length, from where it leaves the head over nut and bridge to its exit. What is wound up or knotted beyond is not counted. */
export function stringPieces(spec: Spec, instrument: Instrument): Piece[] {
  return spec.strings.map(({ name, mass }, i): Piece => {
    const run = placesAlong(spec, instrument, i);
    const weights = run.slice(1).map((to, k) => {
      const from = run[k]!;
      const length = Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z);
      const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2, z: (from.z + to.z) / 2 };
      return { mass: (mass * length) / 1000, middle };
    });
    const all = weights.reduce((sum, one) => sum + one.mass, 0);
    const mean = (axis: "x" | "y" | "z") =>
      weights.reduce((sum, one) => sum + one.mass * one.middle[axis], 0) / all;
    return {
      name: `string-${name}`,
      kind: "string",
      mass: all,
      centre: { x: mean("x"), y: mean("y"), z: mean("z") },
    };
  });
}

/** Where a string leaves the head, and where it passes nut, bridge and tailpiece. */
function placesAlong(spec: Spec, { tuners, layout, heights, core, exits }: Instrument, i: number): Vec3[] {
  const of = (id: string) => dimensionOf(spec, id);
  const { along, end } = tuners.tuners[i]!;
  const face = { nutThickness: of("nut.thickness"), angle: of("head.angle") };
  const exit = fromCore(core, { x: exits.along[i]!, z: of("tailpiece.height") });
  return [
    { ...end, z: onHead(face, along, of("tuner.height")).z },
    { x: 0, y: layout.nut[i]!, z: heights.nut[i]! },
    { x: of("string.length"), y: layout.bridge[i]!, z: heights.bridge[i]! },
    { ...exit, y: exits.across[i]! },
  ];
}
