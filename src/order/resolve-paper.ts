import { didYouMean } from "./nearest.ts";
import { type Checked, type Problem, quoted } from "./problem.ts";
import type { ReadFile } from "./read.ts";
import type { OrderFile } from "./schema/order.ts";
import type { Paper, Shop } from "./shop.ts";

/** The paper that an order's full-size sheets are laid out on: the one that it names, or else the first of its shop. */
export function resolvePaper(
  { data, written }: ReadFile<OrderFile>,
  { shop, paper }: Pick<Shop, "shop" | "paper">,
): Checked<Paper> {
  const found = data.paper === undefined ? paper[0] : paper.find(({ id }) => id === data.paper);
  if (found !== undefined) return { ok: true, value: found };
  const names = paper.map(({ id }) => id);
  const problem: Problem = {
    ...{ code: "unknown-name", position: written.at(["paper"]), name: "paper" },
    ...{ found: quoted(String(data.paper)), allowed: names.join(", ") },
    hint: didYouMean(String(data.paper), names, `add it to the shop ${shop}`),
  };
  return { ok: false, problems: [problem] };
}
