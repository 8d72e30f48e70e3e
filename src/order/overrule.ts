/** Names of checks that protect a person or a machine and that no order overrules, whatever file name follows the name. */
const neverOverruled: readonly string[] = [
  "feed.climb",
  "clamp.swept",
  "speed.mark",
  "printed.guide",
  "laser.material",
  "guide.missing",
  "cutter.short",
  "hold.none",
  "hand.near",
  "run-in.missing",
  "rim-speed",
  "trapped",
  "work.small",
  "metal",
];

/** Whether a check's id is one that can never be overruled. */
export function canBeOverruled(id: string): boolean {
  return !neverOverruled.some((name) => id === name || id.startsWith(`${name}.`));
}
