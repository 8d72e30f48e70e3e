import { z } from "zod";
import { bodyEdges } from "../body-edge.ts";
import { catalogue } from "../catalogue.ts";
import type { Feature } from "../settable.ts";
import type { Side } from "../side.ts";
import { form } from "./dimension.ts";
import { face, places } from "./face.ts";
import { measure } from "./measure.ts";
import { quantity, wholeNumber } from "./quantity.ts";
import { record } from "./record.ts";
import { oneOf, word } from "./word.ts";

function own(feature: Feature) {
  return Object.fromEntries(
    catalogue.filter((entry) => entry.feature === feature).map((entry) => [entry.id, form(entry)]),
  );
}

/** What frets change of the rest, such as how low the strings lie. */
const changed = Object.fromEntries(
  catalogue.filter(({ feature }) => feature === null).map((entry) => [entry.id, form(entry).optional()]),
);

/** The frets that a design offers, for orders that ask for them. */
export const frets = record({
  most: wholeNumber(1, 36, "how many frets an order may ask for"),
  slots: oneOf(["through", "blind"], "slots sawn from edge to edge, or ending short of the board's edges"),
  dimensions: record({ ...own("frets"), ...changed }),
});

/** Dots in the board's face, or in its bass edge. */
export function dots(feature: "dots" | "side-dots") {
  return record({
    at: z
      .union(
        [
          oneOf(["usual"], "3, 5, 7, 9, 12, 15, 17, 19, 21, 24"),
          z.array(wholeNumber(1, 36, "the number of a fret")),
        ],
        {
          error: "usual, or a list of frets' numbers",
        },
      )
      .meta({ description: "usual, or the numbers of the frets that they mark" }),
    dimensions: record(own(feature)),
  });
}

/** Outlines that are let into the board. */
export const inlays = record({
  dimensions: record(own("inlays")),
  list: z.array(
    record({
      id: word("the inlay's name"),
      at: record({
        x: measure.meta({
          description: "its frame's middle from the nut: a length, or a fraction of the board",
        }),
        y: quantity("length", "its frame's middle to the treble side"),
      }),
      face,
    }),
    { error: "a list of inlays" },
  ),
});

const profile = oneOf(["round", "bevel", "none"], "how the edge between a face and what is cut is eased");

/** One wing: its outline in its own plane, seen from the front, along its own axis and out from the joint line's head end. */
function wing(side: Side) {
  const dimensions = catalogue.filter(({ feature, part }) => feature === "wings" && part === `wing-${side}`);
  return record({
    dimensions: record(Object.fromEntries(dimensions.map((entry) => [entry.id, form(entry)]))),
    face,
    profile: record({ front: profile, back: profile }),
    pins: z
      .array(
        record({
          id: word("the pin's name"),
          at: z.tuple([measure, measure], { error: "two measures: [along, down]" }),
        }),
        {
          error: "a list of pins",
        },
      )
      .meta({ description: "the joint's index pins: along its length, and down from the wing's front" }),
  });
}

/** The wings that are joined to the core's sides. */
export const wings = record({ bass: wing("bass"), treble: wing("treble") });

/** A body in one piece, which takes in the core, and how it is cut round. */
export const body = record({
  core: z.union(
    [
      oneOf(["through"], "a core that runs right through the body"),
      record({ recess: record({ dimensions: record(own("body-recess")) }) }),
    ],
    { error: "through, or { recess: … } where the body's front is sunk for the core and a floor is left" },
  ),
  corners: z.union(
    [
      oneOf(["none"], "bouts that run fair into the waist"),
      record({ four: record({ dimensions: record(own("body-corners")) }) }),
    ],
    { error: "none, or { four: … } for corners between bouts and waist" },
  ),
  profile: record({ front: profile, back: profile }),
  cut: z
    .union([oneOf(["all"], "cut all round"), z.array(oneOf(bodyEdges, "an edge of the body")).min(1)], {
      error: "all, or a list of the edges that are cut: head, bass, treble",
    })
    .meta({ description: "all, or the edges that are cut to the line; the others keep the blank's edge" }),
  dimensions: record(own("body")),
});

/** How the bridge stands on the core. */
export const foot = z.union(
  [
    oneOf(["standing"], "by itself, held by the strings"),
    record({ cradle: record({ face, dimensions: record(own("cradle")) }) }),
    record({ saddle: record({ screws: places, dimensions: record(own("saddle")) }) }),
  ],
  { error: "standing, { cradle: … } or { saddle: … }" },
);
