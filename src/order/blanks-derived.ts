import type { Derived } from "./derived.ts";
import { sides } from "./side.ts";

/** What the blanks of wings, body, tailpiece and covers and the cut list follow from. */
export const blanksDerived: readonly Derived[] = [
  ...sides.map((side) => ({
    form: new RegExp(`^wing\\.${side}\\.blank\\.(length|width|thickness)$`),
    from: [
      ...["length", "width", "thickness", "cant"].map((name) => `wing.${side}.${name}`),
      "saw.allowance",
    ],
  })),
  {
    form: /^body\.blank\.(length|width|thickness)$/,
    from: ["body.length", "body.lower.width", "body.thickness", "saw.allowance"],
  },
  {
    form: /^tailpiece\.blank\.(length|width|thickness)$/,
    from: ["tailpiece.width", "tailpiece.length", "tailpiece.thickness"],
  },
  {
    form: /^cover\.[a-z0-9-]+\.blank\.(length|width|thickness)$/,
    from: ["what its recess holds", "cover.ledge", "cover.thickness"],
  },
  { form: /^cut-list\.(yield|boards)$/, from: ["the blanks' sizes", "the shop's stock"] },
];
