import { didYouMean } from "./nearest.ts";
import { type Problem, quoted } from "./problem.ts";
import type { ReadFile } from "./read.ts";
import type { DesignFile } from "./schema/design.ts";
import type { WoodsFile } from "./schema/woods.ts";
import type { Spec } from "./spec.ts";

/** Every wood that a design names, with where it stands among its woods. */
function named({ woods }: DesignFile): { readonly wood: string; readonly path: PropertyKey[] }[] {
  return Object.entries(woods).flatMap(([part, of]) => {
    if (of === undefined) return [];
    return typeof of === "string"
      ? [{ wood: of, path: ["woods", part] }]
      : of.map((wood, i) => ({ wood, path: ["woods", part, i] }));
  });
}

/** What the parts are made of that don't come out of a board of the shop's stock. */
export function partWoodsOf({
  woods: { bridge, nut, tailpiece, rod, wings, body, cover },
}: DesignFile): Spec["partWoods"] {
  return { bridge, nut, tailpiece, rod, wings: wings ?? null, body: body ?? null, cover: cover ?? null };
}

/** The woods that a design names and the file of woods doesn't know: what is made of them could not be weighed. */
export function woodProblems({ data, written }: ReadFile<DesignFile>, { woods }: WoodsFile): Problem[] {
  const known = woods.map(({ wood }) => wood);
  return named(data)
    .filter(({ wood }) => !known.includes(wood))
    .map(({ wood, path }) => ({
      ...{ code: "unknown-name", position: written.at(path), name: path.slice(0, 2).join(".") },
      ...{ found: quoted(wood), allowed: known.join(", ") },
      hint: didYouMean(wood, known, "add it to woods.yaml, with its density"),
    }));
}

/** The density, kg/m³, of each wood that a design names, by that name. */
export function densitiesOf(design: DesignFile, { woods }: WoodsFile): { readonly [wood: string]: number } {
  const found = named(design).map(({ wood }) => [wood, woods.find((one) => one.wood === wood)?.density ?? 0]);
  return Object.fromEntries(found);
}
