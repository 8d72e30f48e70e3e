import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { type Blank, blankHolding } from "../../instrument/blank.ts";
import type { Instrument } from "../../instrument/instrument.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";

/** The blank of a part that is too small to be sawn loose on a machine, and its wood. */
export type SmallBlank = { readonly part: string; readonly blank: Blank; readonly wood: string };

/** What is left round a small part, and over its thickness to be planed, mm (G: default, confirm). */
const round = { side: 3, face: 1 } as const;

/** The blanks of bridge, nut, tailpiece and covers, grain along the longer of their two sides. */
export function smallBlanks(spec: Spec, made: Instrument): SmallBlank[] {
  const { bridge, nut, tailpiece, cover } = spec.partWoods;
  const of = (id: string) => dimensionOf(spec, id);
  const covers = made.covers.map(
    ({ recess: { id, cover: own } }): SmallBlank => ({
      ...{ part: `cover-${id}`, wood: cover ?? tailpiece },
      blank: roundOutline(own!.path, own!.thickness),
    }),
  );
  const { tailpiece: plate } = made;
  return [
    { part: "bridge", blank: made.bridgeBlank, wood: bridge },
    { part: "nut", blank: made.nutStock, wood: nut },
    ...(plate.kind === "ok"
      ? [{ part: "tailpiece", blank: roundOutline(plate.path, of("tailpiece.thickness")), wood: tailpiece }]
      : []),
    ...covers,
  ];
}

function roundOutline(path: Path, thickness: number): Blank {
  const { minX, maxX, minY, maxY } = extentsOf([path])!;
  const [a, b] = [maxX - minX + 2 * round.side, maxY - minY + 2 * round.side];
  return blankHolding({ length: Math.max(a, b), width: Math.min(a, b), thickness: thickness + round.face });
}
