import { extentsOf } from "../../../geometry/measure.ts";
import type { Annotated } from "../annotate.ts";
import { lettering, typeSize } from "../lettering.ts";
import type { NeckSheetInput } from "./input.ts";

/** The pins' holes, the rods' channels and what pegs' holes are reamed to as a list; empty where there is none, since beside the plan there is no room for so many words. */
export function sunkList({ pins, rods, face, tolerances }: NeckSheetInput): readonly Annotated[] {
  const deep = (depth: number | "through") => (depth === "through" ? "THROUGH" : `${depth.toFixed(2)} DEEP`);
  const lines = [
    ...pins.map(({ id, diameter, depth, fit }) => {
      return `PIN ${id.toUpperCase()} Ø${diameter.toFixed(2)} ±${fit.toFixed(2)} ${deep(depth)}`;
    }),
    ...rods.map(({ path, depth }) => {
      const { minY, maxY } = extentsOf([path])!;
      const [wide, off] = [maxY - minY, Math.abs(maxY + minY) / 2];
      const where = off < tolerances.usual / 100 ? "ON CENTRELINE" : `Y ${off.toFixed(2)}`;
      return `ROD ${wide.toFixed(2)} WIDE ${deep(depth)} ${where}`;
    }),
    ...(face.hole.back > face.hole.face
      ? ["HOLES REAMED 1:30 FROM THE BACK", `TO Ø${face.hole.back.toFixed(2)} THERE`]
      : []),
  ];
  const { height } = lettering;
  const texts = lines.map((text, i) => {
    return { text, x: 0, y: -i * typeSize(height) * 1.35, height, turn: 0, align: "left" } as const;
  });
  return texts.length === 0 ? [] : [{ kind: "ok", marks: { lines: [], texts } }];
}
