import type { Caution } from "./caution.ts";

/** The cautions of a blank that is sawn to an outline, beside those of every bandsaw: the first where the table is tilted. */
export const sawnBlankCautions: { readonly tilted: Caution; readonly always: readonly Caution[] } = {
  tilted: {
    signal: "WARNING",
    text: "TABLE TILTED: A FENCE ON THE LOW SIDE HOLDS THE WORK; NONE ON THE HIGH SIDE, WHERE IT WOULD TRAP THE WORK",
    source: "S: PUBLISHED BANDSAW GUIDANCE; HIGH SIDE G: DEFAULT, CONFIRM",
  },
  always: [
    {
      signal: "WARNING",
      text: "HOLD THE BLANK WHERE IT REACHES FARTHEST FROM THE BLADE; WHERE A HAND WOULD COME NEARER, STOP THE SAW AND TURN THE WORK ROUND",
      source: "G: DEFAULT, CONFIRM",
    },
    {
      signal: "WARNING",
      text: "BACK OUT OF A RELIEF CUT ONLY WITH THE BLADE STOPPED: IT IS DRAWN OFF ITS WHEELS",
      source: "G: DEFAULT, CONFIRM",
    },
  ],
};
