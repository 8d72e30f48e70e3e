import type { SetUp } from "./set-up.ts";

/** How far a hand-held router's base reaches past its cutter, mm; 0 on other machines. */
export function pastCutter({ machine, cutter }: SetUp): number {
  if (machine.kind !== "router" || machine.mount !== "hand") return 0;
  return Math.max(0, ((machine.base ?? 0) - cutter.diameter) / 2);
}
