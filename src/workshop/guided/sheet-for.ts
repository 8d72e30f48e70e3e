import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Shop } from "../../order/shop.ts";
import { step } from "../../step/step.ts";

/** A template's outline, how thick it has to be at least, how thick with its base where layers may be glued up for that, and the shop's sheets; mm. */
export type SheetInput = {
  readonly template: Path;
  readonly least: number;
  readonly sheets: Shop["stock"]["sheets"];
  readonly base?: number;
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
      /** How many layers of it are glued on one another to that thickness; one where it isn't said. */
      readonly layers?: number;
    }
  | { readonly kind: "too-thin"; readonly least: number }
  | { readonly kind: "too-small"; readonly length: number; readonly width: number };

/** How much wood of the sheet is left round a template, mm; and what a template may be of (S). */
const round = 10;
const materials = /plywood|mdf/;

/**
 * The sheet of plywood or MDF, thick enough and large enough, of which the fewest layers make the base, the thinnest and first by name of several. Where the
 * shop has none so thick, one of what else it has: whether that may guide a cutter is for a check.
 */
export const sheetFor = step(
  "fixture.sheet",
  1,
  ({ template, least, sheets, base = 0 }: SheetInput): SheetFound => {
    const { minX, maxX, minY, maxY } = extentsOf([template])!;
    const [a, b] = [maxX - minX + 2 * round, maxY - minY + 2 * round];
    const [length, width] = [Math.max(a, b), Math.min(a, b)];
    const enough = sheets.filter(({ thickness }) => thickness >= least - 1e-6);
    const usual = enough.filter(({ material }) => materials.test(material));
    const thick = (usual.length > 0 ? usual : enough).sort(
      (p, q) =>
        layersOf(p.thickness, base) - layersOf(q.thickness, base) ||
        p.thickness - q.thickness ||
        (p.id < q.id ? -1 : 1),
    );
    if (thick.length === 0) return { kind: "too-thin", least };
    const fits = thick.find(
      (sheet) =>
        Math.max(sheet.length, sheet.width) >= length - 1e-6 &&
        Math.min(sheet.length, sheet.width) >= width - 1e-6,
    );
    if (fits === undefined) return { kind: "too-small", length, width };
    const { id, material, thickness } = fits;
    const layers = layersOf(thickness, base);
    return {
      ...{ kind: "ok", sheet: id, material, thickness: thickness * layers, length, width },
      ...(layers > 1 ? { layers } : {}),
    };
  },
);

/** How many layers of a thickness make so much. */
function layersOf(thickness: number, base: number): number {
  return Math.max(1, Math.ceil(base / thickness - 1e-9));
}
