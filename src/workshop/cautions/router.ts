import { handDistances } from "../guided/hand-distances.ts";
import type { Caution } from "./caution.ts";
import { guidedCautions } from "./guided.ts";

const { usual, least } = handDistances;

/** Where hands are: on the fixture's handholds, or on the machine's own grips where the tool is moved. */
const hands: { readonly [moves in "work" | "tool"]: Caution } = {
  work: {
    signal: "WARNING",
    text: `HANDS ON THE HANDHOLDS ONLY, ${usual} FROM THE CUTTER; NEVER UNDER ${least}`,
    source: "S: OLDER MANUALS, NEWER ONES THE LESSER FIGURE",
  },
  tool: {
    signal: "WARNING",
    text: "BOTH HANDS ON THE ROUTER'S OWN GRIPS, FIXTURE AND WORK HELD DOWN ON THE BENCH, ITS BASE ON MORE THAN HALF OF ITSELF",
    source: "THE MACHINE'S MANUAL; G: DEFAULT, CONFIRM",
  },
};

/** Where a cut in an opening begins: at a tool that is lowered, or at work that is set over a standing bit. */
const intoOpening: { readonly [moves in "work" | "tool"]: Caution } = {
  tool: {
    signal: "WARNING",
    text: "PLUNGE AT THE MARK, IN WASTE AND CLEAR OF THE EDGE, WITH A BIT THAT CUTS AT ITS END; LIFT IT OUT AND LET IT STOP BEFORE THE ROUTER IS MOVED AWAY",
    source: "S: PUBLISHED ROUTER GUIDANCE; THE MACHINE'S MANUAL",
  },
  work: {
    signal: "WARNING",
    text: "BORE A HOLE WIDER THAN THE BIT AT THE MARK AND SET THE WORK OVER THE BIT WHILE THE MACHINE STANDS; NEVER LOWER WORK ONTO A TURNING BIT, NEVER LIFT IT OFF ONE",
    source: "G: DEFAULT, CONFIRM; THE MACHINE'S MANUAL",
  },
};

/**
 * The cautions of a router and its templates, for every sheet made for one, by what moves and whether an opening is cut, which has no run-in; the gravest
 * first.
 */
export function routerCautions(
  moves: "work" | "tool",
  edge: "outside" | "opening" = "outside",
): readonly Caution[] {
  const guided = guidedCautions.map((one) =>
    edge === "opening" && one.text.startsWith("START ON THE RUN-IN") ? intoOpening[moves] : one,
  );
  return [
    ...guided.slice(0, 1),
    hands[moves],
    ...guided.slice(1, -1),
    {
      signal: "WARNING",
      text: "A BIT OVER ITS SPEED BREAKS UP: SET THE SPEED THAT STANDS HERE, OR THE BIT'S OWN MARK IF THAT IS LOWER",
      source: "S: PUBLISHED CHARTS; EN 847-1",
    },
    ...guided.slice(-1),
  ];
}
