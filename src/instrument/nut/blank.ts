import { fitCircle } from "../../geometry/fit-circle.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import type { NotchPlace } from "../bridge/face.ts";
import { type Circle, notchedCrown, onCircle } from "../notched-crown.ts";

/** Lengths in mm; strings from the highest to the lowest where they pass the nut. */
export type NutInput = {
  readonly width: number;
  readonly allowance: number;
  readonly strings: readonly { readonly y: number; readonly z: number; readonly diameter: number }[];
};

/**
 * The nut seen from the tail: first axis y (treble positive), second z over the surface that it is glued to, mm.
 *
 * `blank` is what is cut, its top `allowance` over the finished crown; `finished` has the crown through the string centres
 * and a round-bottomed slot as wide as each string. `slots` says where each slot stands, how low its bottom lies and how
 * deep that is under the blank's top. Both outlines run counter-clockwise.
 */
export type NutBlank = {
  readonly blank: Path;
  readonly finished: Path;
  readonly height: number;
  readonly slots: readonly (NotchPlace & { readonly depth: number })[];
};

/** The nut from the places of its strings: half of each string is sunk into the crown fitted through their centres. */
export const nutBlank = step("nut.blank", 1, ({ width, allowance, strings }: NutInput): NutBlank => {
  const crown = nutCrown(strings);
  const raised: Circle = { centre: crown.centre, radius: crown.radius + allowance };
  const notches = strings.map(({ y, z, diameter }) => ({ centre: { x: y, y: z }, radius: diameter / 2 }));
  const outline = (circle: Circle, cuts: typeof notches): Path => ({
    closed: true,
    points: [
      { x: -width / 2, y: 0, bulge: 0 },
      { x: width / 2, y: 0, bulge: 0 },
      ...notchedCrown(circle, width / 2, -width / 2, cuts),
    ],
  });
  return {
    blank: outline(raised, []),
    finished: outline(crown, notches),
    height: raised.centre.y + raised.radius,
    slots: notches.map(({ centre, radius }) => {
      const bottom = centre.y - radius;
      const under = (circle: Circle) => onCircle(circle, centre.x).y - bottom;
      return { y: centre.x, bottom, width: 2 * radius, sunk: under(crown), depth: under(raised) };
    }),
  };
});

/** The finished crown, fitted through the string centres: y and z, mm. Strings that lie on a line have none, and throw. */
export function nutCrown(strings: readonly { readonly y: number; readonly z: number }[]): Circle {
  const fit = fitCircle(strings.map(({ y, z }) => ({ x: y, y: z })));
  if (fit.kind !== "ok") throw new RangeError(`no crown through the strings: ${fit.kind}`);
  return { centre: fit.centre, radius: fit.radius };
}
