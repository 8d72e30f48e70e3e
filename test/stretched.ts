import { settables } from "../src/order/catalogue.ts";
import { quantityText } from "../src/order/quantity.ts";
import type { Spec } from "../src/order/spec.ts";
import { orderText, resolved, sampleText } from "./samples.ts";

/** A design's text in which some dimensions may be anything that makes any sense at all. */
function widened(design: string, ids: readonly string[]): string {
  return ids.reduce(
    (text, id) => {
      const { least, most, kind } = settables.get(id)!;
      const range = new RegExp(
        `^(  ${id.replaceAll(".", "\\.")}:\\n    value: .*\\n)    least: .*\\n    most: .*\\n`,
        "m",
      );
      if (!range.test(text)) throw new Error(`${design} has no ${id}`);
      return text.replace(
        range,
        (_, before) =>
          `${before}    least: ${quantityText(least, kind)}\n    most: ${quantityText(most, kind)}\n`,
      );
    },
    sampleText("designs", `${design}.yaml`),
  );
}

/** An order's spec with values that its design would not allow, resolved from a design of wider ranges: what follows from them follows. */
export function stretched(design: string, count: number, values: Readonly<Record<string, number>>): Spec {
  const sets = Object.entries(values).map(([id, value]) => {
    return `  ${id}: ${quantityText(value, settables.get(id)!.kind)}\n`;
  });
  const own = { designs: { [design]: widened(design, Object.keys(values)) } };
  const spec = resolved(orderText(design, count, sets.length > 0 ? `set:\n${sets.join("")}` : ""), {}, own);
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems, undefined, 1));
  return spec.value;
}
