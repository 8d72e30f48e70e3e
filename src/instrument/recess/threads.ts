import { dot } from "../../geometry/solid/vec3.ts";
import { windingsOf } from "../../geometry/winding-at.ts";
import type { Drilled } from "../drilled.ts";
import type { Ground } from "./ground.ts";
import { floorOf, opens } from "./heights.ts";
import type { MadeRecess } from "./recess.ts";

/** The hole of what leads out of a recess through a wall: how much wood it goes through, mm, and whether it comes out at a surface, at a joint or in the core. */
export type ThreadHole = {
  readonly bore: Drilled;
  readonly through: number;
  readonly reach: number;
  readonly outAt: "surface" | "joint" | "core";
};

/** How finely the way out is looked at, mm, before the edge itself is found. */
const look = 0.5;

/** The hole that leads out of a recess in the plane of its part, for an item that goes through a wall; none for any other. */
export function threadHole(recess: MadeRecess, ground: Ground): ThreadHole | null {
  const { thread, at, id } = recess;
  if (thread === null) return null;
  const angle = (thread.way * Math.PI) / 180;
  const z = floorOf(recess, ground.thickness) + opens(recess) * thread.height;
  const place = (way: number) => ({ x: at.x + way * Math.cos(angle), y: at.y + way * Math.sin(angle), z });
  const [own, whole] = [windingsOf([recess.path]), windingsOf([ground.outline])];
  const leaves = first((way) => own(place(way)) === 0);
  const rooms = ground.uprights.filter(({ what }) => what === "the core's room");
  const taken = rooms.map(({ path }) => windingsOf([path]));
  const inCore = (way: number) => taken.some((room) => room(place(way)) !== 0);
  const out = first((way) => way > leaves && (whole(place(way)) === 0 || inCore(way)));
  const end = place(out);
  const jointed = ground.joint !== null && dot(ground.joint, end) < thread.hole / 2;
  const bore: Drilled = {
    ...{ id: `${id}-out`, diameter: thread.hole, from: place(0), to: place(out + thread.hole) },
    wood: [[leaves, out]],
  };
  return {
    ...{ bore, through: out - leaves, reach: thread.reach },
    outAt: inCore(out + 1e-3) ? "core" : jointed ? "joint" : "surface",
  };
}

/** The first way at which something holds, mm; it must hold far enough out. */
function first(holds: (way: number) => boolean): number {
  let b = look;
  while (!holds(b) && b < 5000) b += look;
  let a = b - look;
  while (b - a > 1e-8) {
    const middle = (a + b) / 2;
    if (holds(middle)) b = middle;
    else a = middle;
  }
  return b;
}
