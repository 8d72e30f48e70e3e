import { circle } from "../../geometry/circle.ts";
import { mirrored } from "../../geometry/mirror.ts";
import { offsetPath } from "../../geometry/offset/offset-path.ts";
import type { Path } from "../../geometry/path.ts";
import { leastRadius } from "../../geometry/path-measures/least-radius.ts";
import type { Point } from "../../geometry/point.ts";
import type { HardwareItem } from "../../order/hardware-item.ts";
import type { SpecFace, SpecRecess } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { ringOf } from "../ring.ts";
import { laid, reliefReach, relievedBox, roundedBox } from "./outlines.ts";

/** What recesses and covers are made by, mm. */
export type RecessSizes = {
  readonly clearance: number;
  readonly corner: number;
  readonly cover: {
    readonly thickness: number;
    readonly ledge: number;
    readonly lip: number;
    readonly clearance: number;
    readonly screw: number;
    readonly pilot: number;
    readonly pilotDepth: number;
  };
};

/** A recess as the design has it, the thickness of its part, and whether the part's own axes run the other way across (in a bass wing). */
export type RecessInput = {
  readonly recess: SpecRecess;
  readonly thickness: number;
  readonly turnedOver: boolean;
  readonly sizes: RecessSizes;
};

/** A cover: its outline, its ledge's, how thick it is and deep the ledge, and where its screws go, in the part's own axes; mm. */
export type Cover = {
  readonly path: Path;
  readonly ledge: Path;
  readonly thickness: number;
  readonly screws: readonly Point[];
};

/**
 * A recess in the own axes of its part, seen from its front, mm: its middle, its outline, and its depth from the face that it is sunk from.
 * `shaft` is the hole of what goes square through the face opposite, `thread` what leads out through a wall, which way (degrees), and how high over the floor.
 */
export type MadeRecess = {
  readonly kind: "ok";
  readonly id: string;
  readonly part: SpecRecess["in"];
  readonly from: "front" | "back";
  readonly item: HardwareItem | null;
  readonly at: Point;
  readonly path: Path;
  readonly depth: number;
  readonly cover: Cover | null;
  readonly shaft: { readonly path: Path; readonly hole: number; readonly reach: number } | null;
  readonly thread: {
    readonly way: number;
    readonly hole: number;
    readonly reach: number;
    readonly height: number;
  } | null;
};

/** A recess, or why there is none: too small for its cutter's corners, an edge that can't be made, an inside corner too tight, a cover that can't be. */
export type Recess =
  | MadeRecess
  | {
      readonly kind: "no-corners" | "tight" | "no-cover" | "no-lip";
      readonly id: string;
      readonly least: number;
    }
  | {
      readonly kind: "no-curve" | "no-room" | "unfair";
      readonly id: string;
      readonly edge: string;
    };

/**
 * A recess for a bought item or an outline of its own: so much larger a side than the item as the clearance, its corners freed for a sharp body; deep
 * enough for the item, the clearance and its cover, and for a shaft to reach through what is left.
 */
export const recessMade = step("recess.made", 1, (given: RecessInput): Recess => {
  const { recess, sizes, turnedOver } = given;
  const { id, holds } = recess;
  const drawn =
    holds.kind === "item"
      ? itemOutlines(id, holds.item, sizes)
      : faceOutlines(id, holds.face, sizes, recess.cover);
  if (drawn.kind !== "ok") return drawn;
  const over = (path: Path) => (turnedOver ? mirrored(path, "y") : path);
  const put = (path: Path) => over(laid(path, recess.turn, { x: recess.at[0], y: recess.at[1] }));
  const placed = ({ x, y }: Point) => put(circle({ x, y }, 1)).points;
  const middle = (point: Point): Point => {
    const [a, b] = placed(point);
    return { x: (a!.x + b!.x) / 2, y: (a!.y + b!.y) / 2 };
  };
  const item = holds.kind === "item" ? holds.item : null;
  const { thickness, clearance } = sizes.cover;
  const room = holds.kind === "item" ? holds.item.depth + sizes.clearance : holds.depth;
  const needed = room + (recess.cover ? thickness : 0);
  const shaft = item?.shaft ?? null;
  const depth = shaft === null ? needed : Math.max(needed, given.thickness - shaft.reach);
  if (recess.cover && drawn.lid(clearance) === undefined) return { kind: "no-cover", id, least: 0 };
  return {
    ...{ kind: "ok", id, part: recess.in, from: recess.from, item, depth },
    ...{ at: middle({ x: 0, y: 0 }), path: put(drawn.path) },
    cover: recess.cover
      ? {
          ...{ path: put(drawn.lid(clearance)!), ledge: put(drawn.lid(0)!), thickness },
          screws: drawn.screws.map(middle),
        }
      : null,
    shaft: shaft && { path: put(circle({ x: 0, y: 0 }, shaft.hole / 2)), ...shaft },
    thread:
      item?.thread == null
        ? null
        : {
            ...{ way: (turnedOver ? -1 : 1) * (recess.out ?? 0), height: item.depth / 2 },
            ...{ hole: item.thread.hole, reach: item.thread.reach },
          },
  };
});

type Unmade = Exclude<Recess, MadeRecess>;

/** Outlines about their own middle: the recess's, and its lid's so much smaller than its ledge. */
type Drawn = {
  readonly kind: "ok";
  readonly path: Path;
  readonly lid: (less: number) => Path | undefined;
  readonly screws: readonly Point[];
};

function itemOutlines(
  id: string,
  { body }: HardwareItem,
  { clearance, corner, cover }: RecessSizes,
): Drawn | Unmade {
  const { ledge, lip } = cover;
  if (body.shape === "round") {
    const radius = body.diameter / 2 + clearance;
    if (radius < corner) return { kind: "no-corners", id, least: radius };
    const out = radius + ledge / 2;
    return {
      ...{ kind: "ok", path: circle({ x: 0, y: 0 }, radius) },
      lid: (less) => circle({ x: 0, y: 0 }, radius + ledge - less),
      screws: [
        { x: -out, y: 0 },
        { x: out, y: 0 },
      ],
    };
  }
  const [length, width] = [body.length + 2 * clearance, body.width + 2 * clearance];
  const path = relievedBox(length, width, corner);
  if (path === undefined)
    return { kind: "no-corners", id, least: Math.min(length, width) / (2 * Math.SQRT2) };
  if (lip < corner * reliefReach) return { kind: "no-lip", id, least: corner * reliefReach };
  const out = (length + ledge) / 2;
  return {
    ...{ kind: "ok", path },
    lid: (less) => roundedBox(length + 2 * (ledge - less), width + 2 * (lip - less), corner - less),
    screws: [
      { x: -out, y: 0 },
      { x: out, y: 0 },
    ],
  };
}

function faceOutlines(
  id: string,
  face: SpecFace,
  { corner, cover }: RecessSizes,
  covered: boolean,
): Drawn | Unmade {
  const ring = ringOf(face, {});
  if (ring.kind !== "ok") return { kind: ring.kind, id, edge: ring.edge };
  const tight = leastRadius(ring.path, "left");
  if (tight.kind === "ok" && tight.radius < corner - 1e-9) return { kind: "tight", id, least: tight.radius };
  const centred = laid(ring.path, 0, { x: -face.along / 2, y: -face.out / 2 });
  const grown = (by: number) => {
    const made = offsetPath(centred, by);
    return made.outcome === "ok" ? made.path : undefined;
  };
  return {
    ...{ kind: "ok", path: centred },
    lid: (less) => (covered ? grown(cover.ledge - less) : undefined),
    screws: face.holes.map(({ at: [x, y] }) => ({ x: x - face.along / 2, y: y - face.out / 2 })),
  };
}
