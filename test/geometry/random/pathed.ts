import fc from "fast-check";
import { expect } from "vitest";
import type { PathOffset } from "../../../src/geometry/offset/offset-path.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { outlinesOf } from "../../../src/geometry/region.ts";
import { crossesFinely } from "./outline.ts";

/**
 * The outlines of an offset. An invalid one is passed over if the path does cross itself by less than the random paths
 * were sifted for, and fails else.
 */
export function pathsOf(result: PathOffset, path: Path): readonly Path[] {
  if (result.outcome === "invalid") {
    expect(result.problems.map(({ code }) => code)).toEqual(["self-crossing"]);
    expect(crossesFinely(path)).toBe(true);
    fc.pre(false);
    return [];
  }
  if (result.outcome === "collapsed") return [];
  return result.outcome === "ok" ? [result.path] : outlinesOf(result.region);
}
