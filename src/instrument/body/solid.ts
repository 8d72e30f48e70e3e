import type { Path } from "../../geometry/path.ts";
import { upright } from "../../geometry/solid/frame.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import type { EdgeProfile } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreAxes } from "../core/from-core.ts";
import { easedEdge } from "../eased-edge.ts";
import { lessSunken, type Sunken } from "../sunken.ts";

/** What a body's solid follows from, mm: its outline and its recess in the plane of its front, `drop` under the core's; the recess goes through where it has no depth. */
export type BodySolidInput = {
  readonly core: CoreFrame;
  readonly path: Path;
  readonly thickness: number;
  readonly drop: number;
  readonly arris: number;
  readonly profile: { readonly front: EdgeProfile; readonly back: EdgeProfile };
  readonly recess: { readonly path: Path; readonly depth: number | null };
  readonly sunken: Sunken;
};

/** How far a cutter stands out of the face that it enters, mm. */
const clear = 1;

/** The finished body where it stands on the core: its outline raised, its edges eased, the core's room and what is sunk into it cut out. */
export const bodySolid = step("body.solid", 2, (given: BodySolidInput): Solid => {
  const { core, path, thickness, drop, arris, profile, recess } = given;
  const front = easedEdge(profile.front, arris);
  const back = easedEdge(profile.back, arris);
  const raised: Solid = {
    ...{ kind: "extrude", outlines: [{ outer: path, holes: [] }], base: -thickness, height: thickness },
    ...(front && { top: front }),
    ...(back && { bottom: back }),
  };
  const base = -(recess.depth ?? thickness + clear);
  const room: Solid = {
    kind: "extrude",
    ...{ outlines: [{ outer: recess.path, holes: [] }], base, height: clear - base },
  };
  const flat = lessSunken({ kind: "cut", from: raised, by: [room] }, given.sunken, thickness);
  const lowered: Solid = {
    kind: "place",
    solid: flat,
    frame: { ...upright, origin: { x: 0, y: 0, z: -drop } },
  };
  return { kind: "place", solid: lowered, frame: coreAxes(core) };
});
