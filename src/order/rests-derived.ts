import type { Derived } from "./derived.ts";

/** What is worked out of rests and of the endpin. */
export const restsDerived: readonly Derived[] = [
  {
    form: /^rest\.chin\.(support|strings|tailpiece)$/,
    from: ["rest.chin.along", "rest.chin.out", "rest.chin.length", "rest.chin.width", "rest.chin.height"],
  },
  { form: /^rest\.chin\.edge$/, from: ["the thickness of the part that carries it"] },
  {
    form: /^rest\.(shoulder|knee)\.slot$/,
    from: ["rest.shoulder.travel", "rest.shoulder.hole", "rest.knee.travel"],
  },
  {
    form: /^rest\.(shoulder|knee)\.[A-Za-z0-9][A-Za-z0-9.-]*\.(x|y|wood)$/,
    from: ["the mount's place in the design", "rest.shoulder.travel", "rest.knee.travel"],
  },
  { form: /^rest\.chin\.screws\.wood$/, from: ["rest.chin.screw.depth", "rest.chin.along", "rest.chin.out"] },
  { form: /^endpin\.wood$/, from: ["endpin.down", "endpin.angle", "endpin.bore", "core.depth"] },
  { form: /^endpin\.tip\.(x|z)$/, from: ["endpin.length", "endpin.angle", "endpin.down", "core.end"] },
  {
    form: /^balance\.endpin(\.moment)?$/,
    from: ["endpin.length", "endpin.lean", "the design's woods and hardware"],
  },
];
