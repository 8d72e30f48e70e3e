import type { Blank } from "../instrument/blank.ts";
import { sides } from "../order/side.ts";
import type { Spec } from "../order/spec.ts";
import type { Model } from "../workshop/model.ts";
import { type Dimension, length } from "./dimension.ts";

/** How far the yield may move before a comparison counts it, as a share. */
const yieldTolerance = 0.005;

/** The blanks of wings, body, tailpiece and covers, and what the cut list makes of the boards. */
export function blankDimensions({ wings, body, recesses }: Spec): Dimension[] {
  const covers = recesses.filter(({ cover }) => cover).map(({ id }) => id);
  return [
    ...(wings === null ? [] : sides.flatMap((side) => ofBlank(`wing-${side}`, `wing.${side}`))),
    ...(body === null ? [] : ofBlank("body", "body")),
    ...ofBlank("tailpiece", "tailpiece"),
    ...covers.flatMap((id) => ofBlank(`cover-${id}`, `cover.${id}`, "cover")),
    {
      ...{
        id: "cut-list.yield",
        label: "Share of the boards used, over their whole width, that ends up in blanks",
      },
      ...{ unit: "", part: "blanks", tolerance: yieldTolerance },
      of: ({ blanks }) => blanks.cutList.yield,
    },
    {
      ...{ id: "cut-list.boards", label: "Boards that blanks are sawn out of", unit: "", part: "blanks" },
      ...{ tolerance: 0, of: ({ blanks }) => blanks.cutList.boards.length },
    },
  ];
}

function ofBlank(blank: string, name: string, part = blank): Dimension[] {
  const own = ({ blanks: { sawn, small } }: Model): Blank =>
    [...sawn, ...small].find((one) => one.part === blank)!.blank;
  const sizes = { length: "length along the grain", width: "width", thickness: "thickness before planing" };
  return (["length", "width", "thickness"] as const).map((size) =>
    length(part, `${name}.blank.${size}`, `Blank: ${sizes[size]}`, (model) => own(model)[size]),
  );
}
