import { spawnSync } from "node:child_process";
import { expect, test } from "vitest";

/**
 * Whether a program that a reader test needs is missing. Then a test in its place says so: skipped on a bench, failed in
 * CI, where every reader must be there.
 */
export function missing(program: string, probe: readonly string[]): boolean {
  const there = spawnSync(program, [...probe]).error === undefined;
  if (there) return false;
  const say = `${program} is not installed, so what it would read is not read`;
  test.skipIf(!process.env.CI)(say, () => expect.fail(say));
  return true;
}
