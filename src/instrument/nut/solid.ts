import type { Path } from "../../geometry/path.ts";
import type { Frame } from "../../geometry/solid/frame.ts";
import type { Section, Solid } from "../../geometry/solid/solid.ts";
import { cross, unit, type Vec3 } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";
import { type Circle, notchedCrown } from "../notched-crown.ts";

/**
 * What the nut's solid follows from, mm: its crown, its thickness toward the head and its widths at the board and at the head, and each
 * string's centre at the board's edge, where its slot is highest, with the place that it falls to on the head.
 */
export type NutSolidInput = {
  readonly crown: Circle;
  readonly thickness: number;
  readonly width: { readonly board: number; readonly head: number };
  readonly strings: readonly { readonly diameter: number; readonly at: Vec3; readonly to: Vec3 }[];
};

/** How far a slot's cutter stands out of the nut, mm. */
const clear = 1;

/**
 * The finished nut as it stands on the instrument: its crown, as wide as the neck under it, and in it a round-bottomed slot
 * for each string, which falls toward the head along the string's own way to its post.
 */
export const nutSolid = step("nut.solid", 1, ({ crown, thickness, width, strings }: NutSolidInput): Solid => {
  const section = (x: number, across: number): Section => ({
    ...{ kind: "path", path: outlineOf(crown, across) },
    frame: { origin: { x, y: 0, z: 0 }, ...acrossAxes },
  });
  const top = crown.centre.y + crown.radius;
  return {
    kind: "cut",
    from: { kind: "loft", sections: [section(-thickness, width.head), section(0, width.board)] },
    by: strings.map((string) => slot(string, thickness, top)),
  };
});

const acrossAxes = { u: { x: 0, y: 1, z: 0 }, v: { x: 0, y: 0, z: 1 }, w: { x: 1, y: 0, z: 0 } } as const;

function outlineOf(crown: Circle, width: number): Path {
  const [treble, bass] = [width / 2, -width / 2];
  const base = [bass, treble].map((x) => ({ x, y: 0, bulge: 0 }));
  return { closed: true, points: [...base, ...notchedCrown(crown, treble, bass, [])] };
}

/** What a file takes out along a string: as wide as that, its bottom half the string's diameter under the string's centre at the board. */
function slot({ diameter, at, to }: NutSolidInput["strings"][number], thickness: number, top: number): Solid {
  const way = unit({ x: to.x - at.x, y: to.y - at.y, z: to.z - at.z });
  const aside = unit(cross(way, { x: 0, y: 0, z: 1 }));
  const up = cross(aside, way);
  const radius = diameter / 2;
  // Square to a string that falls, a round bottom lies a little lower than half its width under it.
  const lift = radius / up.z - radius;
  const start = { x: at.x - clear * way.x, y: at.y - clear * way.y, z: at.z + lift - clear * way.z };
  const length = (thickness + clear) / Math.abs(way.x) + 2 * clear;
  const height = (top - at.z - way.z * length) / up.z + clear + radius;
  const frame: Frame = { origin: start, u: aside, v: up, w: { x: -way.x, y: -way.y, z: -way.z } };
  // Its own axes run right-handed, so it is raised against the string's way.
  return {
    kind: "place",
    solid: {
      kind: "extrude",
      outlines: [{ outer: slotPath(radius, height), holes: [] }],
      ...{ base: -length, height: length },
    },
    frame,
  };
}

function slotPath(radius: number, height: number): Path {
  return {
    closed: true,
    points: [
      { x: -radius, y: 0, bulge: 1 },
      { x: radius, y: 0, bulge: 0 },
      { x: radius, y: height, bulge: 0 },
      { x: -radius, y: height, bulge: 0 },
    ],
  };
}
