import { expect, test } from "vitest";
import { cutterAccess } from "../../../src/geometry/access/cutter-access.ts";
import type { Path } from "../../../src/geometry/path.ts";

/**
 * A neck's edge led on and carried out to a base, its numbers rounded to a millionth as a step sees them: joins bend by some
 * millionths of a radian, and its parallel rounds each by an edge of a few hundred-thousandths of a millimetre.
 */
const roundedNeck: Path = {
  closed: true,
  points: [
    { x: -218.82120600000002, y: -23.51, bulge: 0 },
    { x: -117.642411, y: -23.51, bulge: 0 },
    { x: -37, y: -23.51, bulge: 0.029064 },
    { x: -32.793433, y: -23.265277, bulge: 0.022442 },
    { x: -27.661908, y: -22.43137, bulge: 0.007076 },
    { x: -20.978959, y: -20.936046, bulge: -0.017514 },
    { x: -14.32634, y: -19.59266, bulge: -0.023628 },
    { x: -10.326582, y: -19.122614, bulge: -0.024749 },
    { x: -7, y: -19.055252, bulge: 0 },
    { x: 40, y: -20.429989, bulge: 0 },
    { x: 245, y: -26.426182, bulge: -0.012295 },
    { x: 254.605632, y: -26.943748, bulge: -0.00862 },
    { x: 266.552354, y: -28.090026, bulge: -0.002895 },
    { x: 278.229754, y: -29.482508, bulge: 0.005013 },
    { x: 292.819199, y: -31.159586, bulge: 0.010184 },
    { x: 303.441567, y: -32.054569, bulge: 0.011559 },
    { x: 312, y: -32.401985, bulge: 0 },
    { x: 896.947643, y: -42.612285, bulge: 0 },
    { x: 996.1636816122148, y: -44.34410755055654, bulge: 0 },
    { x: 996.1636816122148, y: 440, bulge: 0 },
    { x: -218.82120600000002, y: 440, bulge: 0 },
  ],
};

test("the rests of joins that bend by millionths don't lead the way back astray", () => {
  const region = [{ outer: roundedNeck, holes: [] }];
  for (const radius of [9.525, 30, 50, 62.5, 80]) {
    const access = cutterAccess(region, radius, "outside");
    // All that is hollow lies before the nut; the smallest cutter touches it all.
    if (radius < 31) expect(access.outcome, String(radius)).toBe("clear");
    else {
      if (access.outcome !== "leaves") throw new Error(`${radius}: ${access.outcome}`);
      expect(access.left).toHaveLength(1);
      expect(access.left[0]!.place.x).toBeGreaterThan(-12);
      expect(access.left[0]!.place.x).toBeLessThan(-7);
      expect(access.left[0]!.depth).toBeLessThan(0.3);
    }
  }
});
