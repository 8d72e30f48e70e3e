import { handDistances } from "../guided/hand-distances.ts";
import type { Caution } from "./caution.ts";

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

/** Where a cut begins: on the run-in of an open edge, or inside an opening, by a tool that is lowered or by work that is set over a standing bit. */
const starts: { readonly [kind in "run-in" | "plunge" | "bored"]: Caution } = {
  "run-in": {
    signal: "WARNING",
    text: "START ON THE RUN-IN, GUIDE ON THE TEMPLATE BEFORE THE CUTTER MEETS WOOD, NEVER AT A CORNER",
    source: "S: PUBLISHED SHAPER AND ROUTER GUIDANCE",
  },
  plunge: {
    signal: "WARNING",
    text: "PLUNGE AT THE MARK, IN WASTE AND CLEAR OF THE EDGE, WITH A BIT THAT CUTS AT ITS END; LIFT IT OUT AND LET IT STOP BEFORE THE ROUTER IS MOVED AWAY",
    source: "S: PUBLISHED ROUTER GUIDANCE; THE MACHINE'S MANUAL",
  },
  bored: {
    signal: "WARNING",
    text: "BORE A HOLE WIDER THAN THE BIT AT THE MARK AND SET THE WORK OVER THE BIT WHILE THE MACHINE STANDS; NEVER LOWER WORK ONTO A TURNING BIT, NEVER LIFT IT OFF ONE",
    source: "G: DEFAULT, CONFIRM; THE MACHINE'S MANUAL",
  },
};

/** What every cut along a template asks of whoever makes it, on a shaper or a router. Sources are cited, not quoted. */
const guidedCautions: readonly Caution[] = [
  {
    signal: "DANGER",
    text: "NEVER CLIMB: FEED ONLY AS THE ARROWS SHOW, AGAINST THE ROTATION, AND NEVER BACK OUT OF A CUT",
    source: "S: 29 CFR 1910.213, HSE WIS18; THE MACHINE'S MANUAL COMES FIRST",
  },
  {
    signal: "WARNING",
    text: "ISOLATE THE MACHINE BEFORE CHANGING OR MEASURING CUTTER OR GUIDE; GUARD ALL OF THE CUTTER BUT ITS WORKING PART",
    source: "S: 29 CFR 1910.212, 1910.213(a) AND (s)",
  },
  {
    signal: "WARNING",
    text: "TURN THE CUTTER BY HAND ALL ALONG BEFORE THE FIRST CUT: NOTHING OF FIXTURE, CLAMPS OR SCREWS MAY TOUCH IT",
    source: "G: DEFAULT, CONFIRM",
  },
  {
    signal: "WARNING",
    text: "NOTHING FIXED BESIDE THE CUTTER: WORK OR OFFCUT NEVER BETWEEN IT AND A FENCE OR STOP THAT DOESN'T MOVE WITH THE WORK",
    source: "S: PUBLISHED SHAPER AND ROUTER GUIDANCE",
  },
  {
    signal: "CAUTION",
    text: "HARDWOOD DUST AND NOISE: EXTRACT AT THE CUTTER, PROTECT LUNGS, EYES AND EARS",
    source: "S: NIOSH 1 MG/M3 OF DUST, HSE WIS13",
  },
];

/** The cautions of a router and its templates, for every sheet made for one, by what moves and whether an opening is cut; the gravest first. */
export function routerCautions(
  moves: "work" | "tool",
  edge: "outside" | "opening" = "outside",
): readonly Caution[] {
  return [
    ...guidedCautions.slice(0, 1),
    hands[moves],
    starts[edge === "outside" ? "run-in" : moves === "tool" ? "plunge" : "bored"],
    ...guidedCautions.slice(1, -1),
    {
      signal: "WARNING",
      text: "A BIT OVER ITS SPEED BREAKS UP: SET THE SPEED THAT STANDS HERE, OR THE BIT'S OWN MARK IF THAT IS LOWER",
      source: "S: PUBLISHED CHARTS; EN 847-1",
    },
    ...guidedCautions.slice(-1),
  ];
}
