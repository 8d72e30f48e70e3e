import { bandsawDistances } from "../cautions/bandsaw.ts";

/**
 * One cut of a part at the bandsaw: which face lies on the table, which is up, what is still flat of the one on the table, how far the table is tilted
 * (degrees, positive where it falls away from the column, which stands left of the blade), on which side a fence stands, which end goes first where the cut is tilted, how high the work is
 * under the guide and how high at most the guide stands, mm, and what of an earlier cut is taped back on before it.
 */
export type PartTableCut = {
  readonly cut: "joint" | "rim" | "outline" | "side" | "end";
  readonly onTable: "front" | "back" | "underside";
  readonly up: "front" | "back" | "playing side";
  readonly face: "planed" | "rounded";
  readonly tilt: number;
  readonly fence: "low side" | "none";
  readonly leads: "head" | "tail" | "either";
  readonly work: number;
  readonly guide: number;
  readonly tapedBack: "nothing";
};

/**
 * What the order of a part's cuts follows from. Of a wing: which it is, for which hand, its joint's bevel (degrees, positive where the
 * front arris is sharp), the blank's thickness as planed, how much waste lies beyond its joint's line, mm, and how far the table tilts either way.
 */
export type PartSequenceInput =
  | {
      readonly kind: "wing";
      readonly side: "bass" | "treble";
      readonly hand: "right" | "left";
      readonly bevel: number;
      readonly thickness: number;
      readonly waste: number;
      readonly tilt: readonly [least: number, most: number];
    }
  | { readonly kind: "body" | "board"; readonly thickness: number };

/**
 * The cuts of a part in their order, each with its set-up. A wing's joint comes first, while the far edge of its blank is straight and lies
 * against a fence; then its rim. The wing lies on the low side of a tilted table, where a fence holds it: the edge between its cut
 * face and its upper face comes out sharp, so the face with the sharp arris is up. The table is tilted its usual way, or the other
 * where only that reaches.
 */
export function partSequence(given: PartSequenceInput): readonly PartTableCut[] {
  const { thickness } = given;
  if (given.kind === "wing") return [jointCut(given), flat("rim", "back", "front", thickness)];
  if (given.kind === "body") return [flat("outline", "back", "front", thickness)];
  return [
    flat("side", "underside", "playing side", thickness),
    flat("end", "underside", "playing side", thickness),
  ];
}

function flat(
  cut: PartTableCut["cut"],
  onTable: PartTableCut["onTable"],
  up: PartTableCut["up"],
  work: number,
): PartTableCut {
  return {
    ...{ cut, onTable, up, face: "planed", tilt: 0, fence: "none", leads: "either", work },
    ...{ guide: work + bandsawDistances.guide, tapedBack: "nothing" },
  };
}

function jointCut(given: Extract<PartSequenceInput, { kind: "wing" }>): PartTableCut {
  const { side, hand, bevel, thickness, waste } = given;
  const up = upForJoint(bevel);
  const onTable = up === "front" ? "back" : "front";
  if (bevel === 0) return flat("joint", onTable, up, thickness);
  const [angle, lean] = [Math.abs(bevel), (Math.abs(bevel) * Math.PI) / 180];
  const [least, most] = given.tilt;
  const other = angle > most && angle <= -least;
  // The waste lies up the slope of the table.
  const work = thickness / Math.cos(lean) + waste * Math.sin(lean);
  // Each of these turns the wing end for end before the blade.
  const turns = [side === "bass", hand === "left", up === "back", other].filter(Boolean).length;
  return {
    ...{ cut: "joint", onTable, up, face: "planed", tilt: other ? -angle : angle, fence: "low side" },
    ...{ leads: turns % 2 === 0 ? "head" : "tail", work },
    ...{ guide: work + bandsawDistances.guide, tapedBack: "nothing" },
  };
}

/** The face that is up when a wing's joint is sawn: the one whose arris is sharp, the front where it is square. */
export function upForJoint(bevel: number): "front" | "back" {
  return bevel < 0 ? "back" : "front";
}
