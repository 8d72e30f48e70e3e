import { neckFixture } from "./fixture-names.ts";
import { allInsides } from "./inside-names.ts";
import { didYouMean } from "./nearest.ts";
import { type Checked, type Problem, quoted } from "./problem.ts";
import type { ReadFile } from "./read.ts";
import type { OrderFile } from "./schema/order.ts";
import type { Shop } from "./shop.ts";
import type { Spec } from "./spec.ts";

/** Inside templates: their plates say themselves where clamps stand. */
const insideFiles = allInsides.map(({ file }) => file);

/**
 * What an order names for its fixtures, of which there are `names`. A fixture that there isn't, or a machine, a cutter or a guide that the shop doesn't
 * own, is a problem at its place; whether they go together is for whoever chooses.
 */
export function resolveFixtures(
  { data, written }: ReadFile<OrderFile>,
  names: readonly string[],
  shop: Shop,
): Checked<Spec["fixtures"]> {
  const problems: Problem[] = [];
  const unknown = (path: readonly PropertyKey[], onKey: boolean, found: string, known: readonly string[]) => {
    const position = onKey ? written.atKey(path.slice(0, -1), String(path.at(-1))) : written.at(path);
    const hint = didYouMean(found, known, "remove it");
    problems.push({
      ...{ code: "unknown-name", position, name: path.map(String).join("."), found: quoted(found) },
      ...{ allowed: known.length > 0 ? known.join(", ") : "none: this design has no fixtures", hint },
    });
  };
  const owned = { machine: shop.machines, cutter: shop.cutters, guide: shop.guides } as const;
  const fixtures = Object.entries(data.fixtures ?? {}).map(([name, named]) => {
    if (!names.includes(name)) unknown(["fixtures", name], true, name, names);
    for (const [what, list] of Object.entries(owned)) {
      const asked = named[what as keyof typeof owned];
      const known = list.map(({ id }) => id);
      if (asked !== undefined && !known.includes(asked))
        unknown(["fixtures", name, what], false, asked, known);
    }
    if (insideFiles.includes(name))
      for (const what of ["clamps", "handholds"] as const)
        if (named[what] !== undefined)
          unknown(["fixtures", name, what], true, what, ["machine", "cutter", "guide"]);
    if (named.template !== undefined && name !== neckFixture)
      unknown(["fixtures", name, "template"], true, "template", ["machine", "cutter", "guide"]);
    const { machine = null, cutter = null, guide = null, clamps, handholds, template } = named;
    const asked = clamps ?? [];
    for (const [i, { clamp }] of asked.entries()) {
      const has = shop.clamps.find(({ id }) => id === clamp);
      const path = ["fixtures", name, "clamps", i, "clamp"];
      if (has === undefined)
        unknown(
          path,
          false,
          clamp,
          shop.clamps.map(({ id }) => id),
        );
      else if (asked.slice(0, i + 1).filter((one) => one.clamp === clamp).length === has.count + 1)
        problems.push({
          ...{
            code: "range",
            position: written.at(path),
            name: path.map(String).join("."),
            found: quoted(clamp),
          },
          ...{
            allowed: `${has.count} of them, as the shop owns`,
            hint: "take another clamp, or leave one out",
          },
        });
    }
    const own = { ...(clamps && { clamps }), ...(handholds && { handholds }), ...(template && { template }) };
    return [name, { machine, cutter, guide, ...own }] as const;
  });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: Object.fromEntries(fixtures) };
}
