/** What is taken off beyond what ends up in a blank, mm (G: default, confirm): planed from a face or an edge that is glued, and sawn between two pieces of one board. */
export const takenOff = { planed: 1, parting: 5 } as const;
