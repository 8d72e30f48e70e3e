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

/** The cautions of a router and its templates, for every sheet made for one, by what moves; the gravest first. */
export function routerCautions(moves: "work" | "tool"): readonly Caution[] {
  return [
    ...guidedCautions.slice(0, 1),
    hands[moves],
    ...guidedCautions.slice(1, -1),
    {
      signal: "WARNING",
      text: "A BIT OVER ITS SPEED BREAKS UP: SET THE SPEED THAT STANDS HERE, OR THE BIT'S OWN MARK IF THAT IS LOWER",
      source: "S: PUBLISHED CHARTS; EN 847-1",
    },
    ...guidedCautions.slice(-1),
  ];
}
