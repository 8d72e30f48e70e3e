import { z } from "zod";
import { measure } from "./measure.ts";
import { record } from "./record.ts";
import { oneOf, word } from "./word.ts";

const point = z.tuple([measure, measure], { error: "two measures: [along, out]" });

/**
 * One edge of an outline. It begins where the one before it ends (the first where the last ends), and runs straight `to` a
 * place, fair `through` places to the one in `to`, or along a curve of the part that it `follows`, which a straight line leads
 * to from where the edge before it ended. `corner` rounds where it ends, and where such a line meets its curve.
 */
export const edge = record({
  id: word("the edge's name"),
  to: point.optional().meta({ description: "where it ends: [along, out]" }),
  through: z.array(point).optional().meta({ description: "places that a fair curve passes on the way" }),
  follows: word("a curve that the program works out for this part").optional(),
  corner: measure.optional().meta({ description: "the radius that its end is rounded with" }),
  use: z
    .union([
      oneOf(["cut"], "cut: sawn and shaped"),
      record({ joined: word("the part that it is joined to") }),
    ])
    .optional(),
  finish: oneOf(["hand"], "what a cutter can't bring out of this edge is finished by hand").optional(),
}).superRefine((edge, context) => {
  const message = "either to or follows; through only beside to";
  if (
    edge.follows === undefined ? edge.to !== undefined : edge.to === undefined && edge.through === undefined
  )
    return;
  context.addIssue({ code: "custom", input: edge, message, params: { code: "type", allowed: message } });
});

/** A pin, a hole, a cavity or a mount on a face. */
export const place = record({
  id: word("the place's name"),
  at: point.meta({ description: "its middle: [along, out]" }),
  size: measure.meta({ description: "its diameter" }),
});

/** Several places, such as a saddle's screws. */
export const places = z.array(place, { error: "a list of places" });

/** An outline in a frame: a ring of edges, and what goes into the face. */
export const face = record({
  frame: record({
    along: word("the dimension that the frame is long"),
    out: word("the dimension that the frame is wide"),
  }),
  edges: z.array(edge, { error: "a list of edges" }).min(3, { error: "at least three edges" }),
  holes: places.optional(),
});

/** A face as it is written in a design. */
export type WrittenFace = z.output<typeof face>;
