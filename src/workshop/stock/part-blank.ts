import { type Extents, extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { type Blank, blankHolding } from "../../instrument/blank.ts";
import { step } from "../../step/step.ts";

/**
 * A part's outline in its own plane, grain along x, how thick its blank is when it is planed and by how much it is planed on either face, the wood to
 * leave beyond the outline, and the least length; mm.
 */
export type PartBlankInput = {
  readonly outline: Path;
  readonly thickness: number;
  readonly planed: number;
  readonly margin: { readonly [end in "head" | "tail" | "low" | "high"]: number };
  readonly least: number;
};

/** A blank as it is sawn out of a board, what it is planed to, and where it lies round its part in the part's own plane; mm. */
export type PartBlank = { readonly blank: Blank; readonly planed: number; readonly place: Extents };

/**
 * The blank round a part, rounded up to what is measured off. What that and the least length add lies past the tail, and half on
 * either side. An outline without extents throws a RangeError.
 */
export const partBlank = step("part.blank", 1, (given: PartBlankInput): PartBlank => {
  const { outline, thickness, planed, margin, least } = given;
  const box = extentsOf([outline]);
  if (box === undefined) throw new RangeError("a part without an outline has no blank");
  const [minX, minY] = [box.minX - margin.head, box.minY - margin.low];
  const [length, width] = [box.maxX + margin.tail - minX, box.maxY + margin.high - minY];
  const blank = blankHolding({
    length: Math.max(length, least),
    width,
    thickness: thickness + 2 * planed,
  });
  const aside = (blank.width - width) / 2;
  return {
    ...{ blank, planed: thickness },
    place: { minX, maxX: minX + blank.length, minY: minY - aside, maxY: minY - aside + blank.width },
  };
});
