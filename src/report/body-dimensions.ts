import { extentsOf, signedArea } from "../geometry/measure.ts";
import { type Body, madeBody } from "../instrument/body/body.ts";
import { dimensionOf, type Spec } from "../order/spec.ts";
import { type Dimension, length } from "./dimension.ts";

/** What is worked out of a body in one piece; nothing on an instrument without. */
export function bodyDimensions({ body }: Spec): Dimension[] {
  if (body === null) return [];
  const of = (name: string, label: string, value: (body: Body) => number) =>
    length("body", `body.${name}`, label, ({ instrument }) => value(instrument.body!));
  const made = (name: string, label: string, value: (made: ReturnType<typeof madeBody>) => number) =>
    of(name, label, (own) => value(madeBody(own)));
  const recessed = [
    of("floor", "Wood of the body under the core", ({ floor }) => floor!),
    made(
      "recess.depth",
      "Depth of the recess for the core in the body's front",
      ({ recess }) => recess.depth,
    ),
  ];
  return [
    made("end", "Tail end of the body, along the core's front from its start", ({ outline }) => {
      return extentsOf([outline.path])!.maxX;
    }),
    made("width", "Greatest width of the body", ({ outline }) => {
      const { minY, maxY } = extentsOf([outline.path])!;
      return maxY - minY;
    }),
    of("wall", "Least wood of the body beside the core and behind its tail", ({ wall }) => wall.left),
    ...(body.core === "recess" ? recessed : []),
    made("recess.width", "Width of the room for the core, at the body's head end", ({ recess }) => {
      return 2 * recess.half.head;
    }),
    made(
      "recess.end",
      "Tail end of the room for the core, along the core's front",
      ({ recess }) => recess.end,
    ),
    length(
      "body",
      "body.under.board",
      "The body's front under the board, at the body's head end",
      ({ spec, instrument: { core } }) => {
        const slope = (core.slope * Math.PI) / 180;
        const [along, down] = [dimensionOf(spec, "body.start"), dimensionOf(spec, "body.drop")];
        return core.drop + along * Math.sin(slope) + down * Math.cos(slope);
      },
    ),
    {
      ...{ id: "body.area", label: "Area of the body from the front, the core's room included", unit: "mm²" },
      ...{ part: "body", tolerance: 50 },
      of: ({ instrument }) => signedArea(madeBody(instrument.body!).outline.path),
    },
  ];
}
