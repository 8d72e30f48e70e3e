import { depthIn } from "../../geometry/path-measures/depth-in.ts";
import { type Look, mm, unless } from "./at-odds.ts";

/** Holes of the bridge that leave it, or leave too little wood round them. */
export const holesAtOdds: Look = (of, { bridge }) => {
  if (bridge.kind !== "ok") return [];
  const least = of("bridge.wall");
  return bridge.holes.flatMap(({ id, size, at }) => {
    const away = Math.max(0, depthIn(bridge.cut, at));
    const wood = away - size / 2;
    return unless(wood >= least, ["bridge.arch", "bridge.wall"], {
      place: `bridge.${id}`,
      found:
        away === 0
          ? `a hole ${id} whose middle is outside the bridge`
          : `${mm(wood)} of wood round the hole ${id}`,
      allowed: `at least ${mm(least)} of wood all round`,
      hint: `move hole ${id}, make it smaller, or change bridge.arch`,
    });
  });
};

/** Outlines whose edges or corners can't be made. */
export const outlinesAtOdds: Look = (of, { board, bridge, crownFace }) => {
  const ends = [crownFace.smooth[0]!, crownFace.smooth.at(-1)!];
  const lowest = Math.min(...ends.map(({ y }) => y));
  return [
    ...(board.kind === "ok"
      ? []
      : unless(false, ["fingerboard.corner"], {
          found: `corners of radius ${mm(of("fingerboard.corner"))}`,
          allowed: "corners that the board's end has room for",
          hint: "lower fingerboard.corner",
        })),
    ...unless(lowest > of("bridge.arch"), ["bridge.arch", "bridge.margin"], {
      found: `an opening ${mm(of("bridge.arch"))} high in a bridge whose crown ends at ${mm(lowest)}`,
      allowed: `an opening lower than ${mm(lowest)}`,
      hint: "lower bridge.arch or bridge.margin",
    }),
    ...(bridge.kind === "ok"
      ? []
      : unless(false, ["bridge.foot.width", "bridge.arch"], {
          place: `bridge.${bridge.edge}`,
          found: `a bridge whose edge ${bridge.edge} can't be made`,
          allowed: edgeFaults[bridge.kind],
          hint: `mend edge ${bridge.edge} of the design's bridge, or bridge.foot.width`,
        })),
  ];
};

const edgeFaults = {
  "no-curve": "an edge that follows a curve of the bridge: bridge.crown",
  "no-room": "a corner with a radius that what lies on either side has room for",
  unfair: "places that a fair curve passes without turning back",
} as const;
