import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Shop } from "../../order/shop.ts";
import { step } from "../../step/step.ts";

/** A template's outline, how thick it has to be at least, and the shop's sheets; mm. */
export type SheetInput = {
  readonly template: Path;
  readonly least: number;
  readonly sheets: Shop["stock"]["sheets"];
};

/** The sheet that a template is cut from and the blank's size, or that the shop has none thick enough or none large enough; mm. */
export type SheetFound =
  | {
      readonly kind: "ok";
      readonly sheet: string;
      readonly material: string;
      readonly thickness: number;
      readonly length: number;
      readonly width: number;
    }
  | { readonly kind: "too-thin"; readonly least: number }
  | { readonly kind: "too-small"; readonly length: number; readonly width: number };

/** How much wood of the sheet is left round a template, mm; and what a template may be of (S). */
const round = 10;
const materials = ["birch-plywood", "mdf"];

/** The thinnest sheet of plywood or MDF that is thick enough and large enough, the first by name of several. */
export const sheetFor = step("fixture.sheet", 1, ({ template, least, sheets }: SheetInput): SheetFound => {
  const { minX, maxX, minY, maxY } = extentsOf([template])!;
  const [a, b] = [maxX - minX + 2 * round, maxY - minY + 2 * round];
  const [length, width] = [Math.max(a, b), Math.min(a, b)];
  const thick = sheets
    .filter(({ material, thickness }) => materials.includes(material) && thickness >= least - 1e-6)
    .sort((p, q) => p.thickness - q.thickness || (p.id < q.id ? -1 : 1));
  if (thick.length === 0) return { kind: "too-thin", least };
  const fits = thick.find(
    (sheet) =>
      Math.max(sheet.length, sheet.width) >= length - 1e-6 &&
      Math.min(sheet.length, sheet.width) >= width - 1e-6,
  );
  if (fits === undefined) return { kind: "too-small", length, width };
  const { id, material, thickness } = fits;
  return { kind: "ok", sheet: id, material, thickness, length, width };
});
