import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import type { SpecFoot } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { type Ring, ringOf } from "../ring.ts";

/**
 * What is sunk into the core's front under the bridge, mm: a screw's hole or a pickup's cradle, as its closed outline there (x' and
 * y), how deep it goes square from the front, and its middle.
 */
export type Sunk = {
  readonly kind: "screw" | "cradle";
  readonly id: string;
  readonly path: Path;
  readonly depth: number;
  readonly at: { readonly x: number; readonly y: number };
  /** A screw's diameter; a cradle's length along the core. */
  readonly size: number;
};

/** All that is sunk, or the edge of the cradle that can't be made and why. */
export type BridgeSunk =
  | { readonly kind: "ok"; readonly sunk: readonly Sunk[] }
  | Exclude<Ring, { readonly kind: "ok" }>;

/** What is sunk under the bridge follows from its foot: the x' of its middle and tail edge and its width, and the depth; mm. */
export type SunkInput = {
  readonly foot: SpecFoot;
  readonly middle: number;
  readonly tail: number;
  readonly width: number;
  readonly depth: number;
};

/**
 * The holes of a saddle's screws, or a pickup's cradle, in the core's front. Screws stand across from the foot's bass end and along
 * from its tail edge; a cradle's frame has its middle under the foot's. Nothing under a bridge that stands by itself.
 */
export const bridgeSunk = step("bridge.sunk", 1, (given: SunkInput): BridgeSunk => {
  const { foot, middle, tail, width, depth } = given;
  if (foot.kind === "standing") return { kind: "ok", sunk: [] };
  if (foot.kind === "saddle") {
    const sunk = foot.screws.map(({ id, at: [across, along], size }): Sunk => {
      const at = { x: tail - along, y: across - width / 2 };
      return { kind: "screw", id, path: circle(at, size / 2), depth, at, size };
    });
    return { kind: "ok", sunk };
  }
  const ring = ringOf(foot.face, {});
  if (ring.kind !== "ok") return ring;
  const [dx, dy] = [middle - foot.face.along / 2, -foot.face.out / 2];
  const path = {
    closed: true,
    points: ring.path.points.map(({ x, y, bulge }) => ({ x: x + dx, y: y + dy, bulge })),
  };
  const at = { x: middle, y: 0 };
  return {
    kind: "ok",
    sunk: [{ kind: "cradle", id: "cradle", path, depth, at, size: foot.face.along }],
  };
});

/** What is sunk under the bridge of a model that contradictions found nothing wrong with; throws at a cradle that can't be made. */
export function madeSunk(sunk: BridgeSunk): readonly Sunk[] {
  if (sunk.kind !== "ok") throw new RangeError(`the cradle can't be made: ${sunk.kind}`);
  return sunk.sunk;
}
