import { clearOfPost } from "../../geometry/solid/clear-of-post.ts";
import { fromFrame } from "../../geometry/solid/frame.ts";
import { segmentsApart } from "../../geometry/solid/segments-apart.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreAxes } from "../core/from-core.ts";
import { type CoreWidth, coreHalf } from "../core/width.ts";
import { lowerTo, raiseTo, type Wall } from "../wall.ts";
import { cornersOf } from "./edges-of.ts";
import type { Taken } from "./ground.ts";

/**
 * An endpin's bore in the tail of a core that ends square to z = 0 at x = `end`, mm and degrees. It leaves the tail `down` under the core's front; `angle` is the
 * pin's to that front, positive where its tip points to the back. `length` is its tip from the tail; `wall` the least wood wanted.
 */
export type EndpinInput = {
  readonly core: CoreFrame & CoreWidth & { readonly depth: number; readonly end: number };
  readonly bore: number;
  readonly depth: number;
  readonly angle: number;
  readonly down: number;
  readonly length: number;
  readonly wall: number;
  readonly taken: readonly Taken[];
};

/** An endpin: where its bore leaves the tail, the way into the wood from there (a unit vector), and its tip, among the instrument's axes; the wood round its bore. */
export type Endpin = {
  readonly mouth: Vec3;
  readonly way: Vec3;
  readonly tip: Vec3;
  readonly diameter: number;
  readonly depth: number;
  readonly walls: readonly Wall[];
};

/** The endpin's bore on the core's middle plane. */
export const endpin = step("rest.endpin", 1, (given: EndpinInput): Endpin => {
  const { core, bore, depth, down, length } = given;
  const [slope, lean] = [(core.slope * Math.PI) / 180, (given.angle * Math.PI) / 180];
  const mouth = { x: (core.end - core.start + down * Math.sin(slope)) / Math.cos(slope), y: 0, z: -down };
  const way = { x: -Math.cos(lean), y: 0, z: Math.sin(lean) };
  const on = (by: number): Vec3 => ({ x: mouth.x + way.x * by, y: 0, z: mouth.z + way.z * by });
  const axes = coreAxes(core);
  const placed = ({ x, y, z }: Vec3) => fromFrame(axes, x, y, z);
  return {
    mouth: placed(mouth),
    way: fromFrame({ ...axes, origin: nowhere }, way.x, 0, way.z),
    tip: placed(on(-length)),
    ...{ diameter: bore, depth, walls: wallsOf(given, mouth, on(depth), lean) },
  };
});

const nowhere: Vec3 = { x: 0, y: 0, z: 0 };

function wallsOf(given: EndpinInput, mouth: Vec3, end: Vec3, lean: number): Wall[] {
  const { core, bore, wall, down, taken } = given;
  const radius = bore / 2;
  const high = radius * Math.cos(lean);
  const front = -Math.max(mouth.z, end.z) - high;
  const back = core.depth + Math.min(mouth.z, end.z) - high;
  const along = Math.cos((core.slope * Math.PI) / 180);
  const half = Math.min(...[mouth, end].map(({ x }) => coreHalf(core, core.start + x * along)));
  const ids = ["endpin.down", "endpin.angle", "endpin.bore", "endpin.depth", "core.depth"];
  const narrower = (left: number) => lowerTo("endpin.bore", bore - 2 * (wall - left));
  const what = "the endpin's bore";
  return [
    {
      ...{ left: front, between: `${what} and the core's front`, ids },
      mend: `${raiseTo("endpin.down", down + wall - front)} or ${narrower(front)}`,
    },
    {
      ...{ left: back, between: `${what} and the core's back`, ids },
      mend: `${lowerTo("endpin.down", down - wall + back)} or ${narrower(back)}`,
    },
    {
      ...{ left: half - radius, between: `${what} and the core's sides`, ids: ["endpin.bore", "core.width"] },
      mend: narrower(half - radius),
    },
    ...taken.map((one) => {
      const left = toTaken(one, { from: mouth, to: end }, core.depth) - radius;
      return {
        ...{ left, between: `${what} and ${one.what}`, ids: ["endpin.depth", "endpin.bore"] },
        mend: `${lowerTo("endpin.depth", Math.max(0, given.depth - (wall - left)))} or less, or move ${one.what}`,
      };
    }),
  ];
}

function toTaken(taken: Taken, axis: { readonly from: Vec3; readonly to: Vec3 }, thickness: number): number {
  if (taken.kind === "bored") return segmentsApart(axis, taken.axis) - taken.radius;
  const post = {
    corners: cornersOf(taken.path),
    top: taken.from === "front" ? taken.depth : taken.depth - thickness,
  };
  const turned = (place: Vec3) => (taken.from === "front" ? { ...place, z: -place.z } : place);
  return clearOfPost(post, [{ from: turned(axis.from), to: turned(axis.to) }]);
}
