import type { TriangleMesh } from "../../src/geometry/solid/triangle-mesh.ts";
import type { Instrument } from "../../src/instrument/instrument.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { polygonOf } from "../simple-ring.ts";
import { heightsAt } from "./slice.ts";

export const radians = (degrees: number) => (degrees * Math.PI) / 180;

type Ring = readonly (readonly [number, number])[];

/** A ring's area and its first moment about y = 0, by the shoelace. */
function moments(ring: Ring): { area: number; moment: number } {
  let [area, moment] = [0, 0];
  for (const [i, [x, y]] of ring.entries()) {
    const [u, v] = ring[(i + 1) % ring.length]!;
    const cross = x * v - u * y;
    area += cross / 2;
    moment += (cross * (y + v)) / 6;
  }
  return { area: Math.abs(area), moment: Math.abs(moment) };
}

/** The bridge's volume: its outline less its holes, each height as thick as the taper has it there. */
export function bridgeVolume(spec: Spec, { bridge, crown }: Instrument): number {
  if (bridge.kind !== "ok") throw new Error("no outline");
  const lean = Math.cos(radians(dimensionOf(spec, "bridge.tilt")));
  const [foot, top] = [dimensionOf(spec, "bridge.foot.thickness"), dimensionOf(spec, "bridge.top.thickness")];
  const of = (path: Parameters<typeof polygonOf>[0]) => {
    const { area, moment } = moments(polygonOf(path, 200).map(([x, y]) => [x, y * lean] as const));
    return foot * area - ((foot - top) / crown.height) * moment;
  };
  return of(bridge.finished) - bridge.holes.reduce((sum, { path }) => sum + of(path), 0);
}

/**
 * How far each string's centre lies from half its diameter over the wood of its notch, on an upright through the bridge: where the string passes
 * the string length, or where the crown is nearest to that along the core.
 */
export function offNotches(spec: Spec, made: Instrument, bridge: TriangleMesh) {
  const slope = radians(dimensionOf(spec, "core.slope"));
  const length = dimensionOf(spec, "string.length");
  return spec.strings.map(({ diameter }, i) => {
    const [y, z] = [made.layout.bridge[i]!, made.heights.bridge[i]!];
    const at = (moved: number) => {
      const under = heightsAt(bridge, length + moved * Math.cos(slope), y + 1e-4).at(-1);
      return under === undefined ? undefined : z - moved * Math.sin(slope) - under;
    };
    const steps = Array.from({ length: 61 }, (_, k) => (k % 2 === 0 ? 1 : -1) * Math.ceil(k / 2) * 0.05);
    const moved = steps.find((step) => Math.abs((at(step) ?? 99) - diameter / 2) < 1);
    return { moved: moved!, off: Math.abs(at(moved!)! - diameter / 2) };
  });
}
