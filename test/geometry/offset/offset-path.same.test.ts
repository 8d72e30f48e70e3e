import fc from "fast-check";
import { expect, test } from "vitest";
import { offsetPath } from "../../../src/geometry/offset/offset-path.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { areaOf, lengthOf } from "../random/area.ts";
import { spread } from "../random/distance.ts";
import { mirrored, moved, quarterTurned, startedAt, turnedRound } from "../random/moved.ts";
import { offsetCase } from "../random/outline.ts";
import { pathsOf } from "../random/pathed.ts";
import { runs, seed } from "../random/runs.ts";

/** The offset of a changed path must be the changed offset: as many outlines, one on the other, the same area. */
function sameAfter(change: (path: Path, pick: number) => Path) {
  fc.assert(
    fc.property(offsetCase, fc.nat(1_000), ({ path, by }, pick) => {
      const plain = pathsOf(offsetPath(path, by), path);
      const after = pathsOf(offsetPath(change(path, pick), by), path);
      const expected = plain.map((found) => change(found, pick));
      const slack = 1e-6 * (1 + lengthOf([path]));
      expect(Math.abs(Math.abs(areaOf(after)) - Math.abs(areaOf(expected)))).toBeLessThan(slack);
      expect(after.length).toBe(plain.length);
      if (plain.length > 0) expect(spread(after, expected, 2).most).toBeLessThan(2e-6);
    }),
    { seed, numRuns: runs },
  );
}

test("is the same walked the other way", () => sameAfter(turnedRound));
test("is the same from each start", () => sameAfter(startedAt));
test("is the same mirrored", () => sameAfter(mirrored));
test("is the same after a quarter turn", () => sameAfter(quarterTurned));
test("is the same moved", () => sameAfter((path, pick) => moved(path, 37 * pick, -11.3 * pick)));
