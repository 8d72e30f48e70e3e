import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { polygonRound } from "../../geometry/polygon-round.ts";
import { listsApart } from "../../geometry/solid/segments-apart.ts";
import type { SpecFace } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { type Ring, ringOf } from "../ring.ts";
import { cornersOf, edgesOf } from "./edges-of.ts";
import type { Ground } from "./ground.ts";
import { pastBorders } from "./past-borders.ts";

/** A chin rest's footprint, mm and degrees: its outline in its frame, and where the frame's middle lies on its part, along and out, turned outward; `flipped` on a wing of the bass side. */
export type ChinInput = {
  readonly face: SpecFace;
  readonly at: Point;
  readonly turn: number;
  readonly flipped: boolean;
};

/** A footprint in its part's plane, seen from the front, y to the treble side, and its screws' places; or the edge that can't be made. */
export type ChinFoot =
  | {
      readonly kind: "ok";
      readonly path: Path;
      readonly screws: readonly { readonly id: string; readonly at: Point; readonly size: number }[];
    }
  | Exclude<Ring, { readonly kind: "ok" }>;

/** The outline that a chin rest stands on. */
export const chinFoot = step("rest.chin-foot", 1, ({ face, at, turn, flipped }: ChinInput): ChinFoot => {
  const ring = ringOf(face, {});
  if (ring.kind !== "ok") return ring;
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const s = flipped ? -1 : 1;
  const placed = ({ x, y }: Point): Point => {
    const [dx, dy] = [x - face.along / 2, y - face.out / 2];
    return { x: at.x + dx * cos - dy * sin, y: at.y + dx * sin + dy * cos };
  };
  const laid: Path = {
    closed: true,
    points: ring.path.points.map((point) => ({ ...placed(point), bulge: point.bulge })),
  };
  return {
    ...{ kind: "ok", path: flipped ? mirrored(laid, "y") : laid },
    screws: face.holes.map(({ id, at: [x, y], size }) => {
      const place = placed({ x, y });
      return { id, size, at: { x: place.x, y: s * place.y } };
    }),
  };
});

/** A footprint on its part's wood: how far it stays from where that isn't flat any more, mm, and what that is; negative where it reaches past it. */
export type Support = { readonly left: number; readonly what: string };

/** What of the part's front bears a footprint: as far as its edges are eased, its joint, and what is sunk into its front. */
export const chinSupport = step(
  "rest.chin-support",
  1,
  ({ path, ground }: { readonly path: Path; readonly ground: Ground }): Support => {
    const [foot, edges] = [cornersOf(path), edgesOf(path)];
    const past = pastBorders(ground, foot);
    const onWood = ground.borders.map(({ what, path: border, eased }, i): Support => {
      const left = past[i]! > 0 ? -past[i]! : listsApart(edges, edgesOf(border));
      return { left: left - eased.front, what };
    });
    const overHoles = ground.taken.flatMap((taken): Support[] => {
      if (taken.kind === "bored" || taken.from === "back") return [];
      const hole = cornersOf(taken.path);
      const over = foot.some((at) => polygonRound(hole, at)) || hole.some((at) => polygonRound(foot, at));
      const away = listsApart(edges, edgesOf(taken.path));
      return [{ left: over ? -Math.max(away, 1e-3) : away, what: taken.what }];
    });
    return [...onWood, ...overHoles].reduce((least, one) => (one.left < least.left ? one : least));
  },
);
