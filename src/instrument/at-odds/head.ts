import { pegTaper } from "../head/holes.ts";
import { raiseTo, thinnest, type Wall } from "../wall.ts";
import { type Contradiction, type Look, mm, unless } from "./at-odds.ts";

/** Things that must not meet and do. */
function overlapping(walls: readonly Wall[], allowed: string): Contradiction[] {
  const { left, between, ids, mend } = thinnest(walls);
  return unless(left > 0, ids, { found: `${between} overlap by ${mm(-left)}`, allowed, hint: mend });
}

/** A head too short or too narrow for its tuners, or whose posts don't fit their holes. */
export const headAtOdds: Look = (of, { tuners, tunerHole, holeWalls, buttonGaps, taper }) => {
  const { kind, length, half } = tuners;
  const [margin, shoulder, radius] = [of("head.margin"), of("head.shoulder"), tunerHole.back / 2];
  // A peg is thinner where its string leaves it than where it leaves the head.
  const least = kind === "pegs" ? tunerHole.face - of("tuner.height") * pegTaper : tunerHole.face;
  return [
    ...unless(margin - radius > shoulder, ["head.margin", "head.shoulder", "tuner.hole"], {
      found: `a head too short for its tuners: the first row's holes begin ${mm(margin - radius)} from a nut whose shoulders take ${mm(shoulder)}`,
      allowed: "a first row behind the shoulders",
      hint: `${raiseTo("head.margin", shoulder + radius + 0.1)} or shorten head.shoulder`,
    }),
    ...overlapping(holeWalls, "a head long and wide enough for its tuners, with wood round every hole"),
    ...overlapping(buttonGaps, "a head long enough for its tuners, whose buttons turn past each other"),
    ...unless(kind === "tail" || of("tuner.post") < least, ["tuner.post", "tuner.hole"], {
      found: `posts of ${mm(of("tuner.post"))} that come out of holes of ${mm(tunerHole.face)}`,
      allowed: `posts under ${mm(least)}`,
      hint: `lower tuner.post under ${mm(least)} or raise tuner.hole over ${mm(of("tuner.post") + tunerHole.face - least)}`,
    }),
    ...unless(half > taper.nut / 2, ["head.edge", ...(kind === "tail" ? [] : ["head.column"])], {
      found: `a head ${mm(2 * half)} wide at a nut ${mm(taper.nut)} wide`,
      allowed: "a head wider than its nut",
      hint: raiseTo("head.edge", of("head.edge") + taper.nut / 2 - half + 0.1),
    }),
    ...unless(of("head.volute") < length, ["head.volute", "head.row", "head.margin"], {
      found: `a back that leaves the head ${mm(of("head.volute"))} from the nut on a head ${mm(length)} long`,
      allowed: "less than the head's length",
      hint: `lower head.volute under ${mm(length)}`,
    }),
  ];
};

/** Strings that cross on the head or run into the posts of others. */
export const headStringsAtOdds: Look = (_, { stringPaths: { crossing, past, mend } }) => [
  ...crossing.slice(0, 1).flatMap(([i, k]) =>
    unless(false, ["head.column", "tuner.post"], {
      found: `strings ${i} and ${k}, counted from the highest, cross on the head`,
      allowed: "strings that run to their posts side by side",
      hint: mend,
    }),
  ),
  ...(crossing.length === 0 ? overlapping(past, "strings that run clear of the posts of others") : []),
];
