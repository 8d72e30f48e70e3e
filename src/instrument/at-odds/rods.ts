import { frontAt } from "../core/frame.ts";
import { thinnest } from "../wall.ts";
import { type Look, mm, unless } from "./at-odds.ts";

/** Channels that are none, run off the neck, or lie over its front where the core has fallen away. */
export const rodsAtOdds: Look = (of, { neckRods, core }) => {
  const [rod] = neckRods;
  if (rod === undefined) return [];
  const end = rod.start + rod.length;
  const fallen = end < core.start ? 0 : -frontAt(core, end);
  return [
    ...unless(rod.length > rod.width, ["rod.length", "rod.width"], {
      found: `a channel ${mm(rod.length)} long and ${mm(rod.width)} wide`,
      allowed: "a channel longer than wide",
      hint: `raise rod.length over ${mm(rod.width)}`,
    }),
    ...unless(end < of("fingerboard.length"), ["rod.length", "rod.start", "fingerboard.length"], {
      found: `a channel that ends ${mm(end)} from the nut under a board ${mm(of("fingerboard.length"))} long`,
      allowed: "an end under the board, which closes the channel",
      hint: `lower rod.length to less than ${mm(of("fingerboard.length") - rod.start)}`,
    }),
    ...unless(fallen < rod.depth, ["rod.length", "rod.depth", "rod.start", "core.start"], {
      found: `a channel ${mm(rod.depth)} deep that ends where the core's front has fallen ${mm(fallen)}`,
      allowed: "a channel deeper than the front falls",
      hint: `raise rod.depth over ${mm(fallen)} or lower rod.length`,
    }),
  ];
};

/** Channels that reach out of the wood or into each other. */
export const rodWallsAtOdds: Look = (_, { neckRodWalls }) => {
  if (neckRodWalls.length === 0) return [];
  const { left, between, ids, mend } = thinnest(neckRodWalls);
  return unless(left > 0, ids, {
    found: `no wood between ${between}: they overlap by ${mm(-left)}`,
    allowed: "wood all along a channel",
    hint: mend,
  });
};
