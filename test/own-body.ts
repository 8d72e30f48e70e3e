import { orderText, resolved, sampleText } from "./samples.ts";

/** How a test's own thrift takes in the core, and whether its bouts meet the waist in corners. */
export type BodyKind = { readonly core: "recess" | "through"; readonly corners: "none" | "four" };

const dimension = (id: string, value: string) =>
  `        ${id}: { value: ${value}, least: 5 mm, most: 200 mm, tolerance: 0.5 mm, for: a test }\n`;

/** Four corners that stand well between thrift's bouts and its waist. */
const corners =
  "  corners:\n    four:\n      dimensions:\n" +
  dimension("body.corner", "6 mm") +
  dimension("body.corner.upper.at", "72 mm") +
  dimension("body.corner.upper.width", "{ part: 1, of: core.width, plus: 52 mm }") +
  dimension("body.corner.lower.at", "164 mm") +
  dimension("body.corner.lower.width", "{ part: 1, of: core.width, plus: 64 mm }");

/** The spec of thrift with another body and nothing sunk into it, at a count of strings. */
export function bodySpec(count: number, { core, corners: kind }: BodyKind, hand: "right" | "left" = "right") {
  let text = sampleText("designs", "thrift.yaml");
  const change = (from: RegExp, to: string) => {
    if (!from.test(text)) throw new Error(`thrift has no ${from}`);
    text = text.replace(from, to);
  };
  if (core === "through") change(/^ {2}core:\n {4}recess:\n {6}dimensions:\n.*\n/m, "  core: through\n");
  if (kind === "four") change(/^ {2}corners: none\n/m, corners);
  // Rests and recesses are placed for the design's own body; the core's own recess still takes its fit.
  change(/\n# What holds it up(.|\n)*?(?=\n# What the design's clearances)/, "");
  change(/\n# Veneers(.|\n)*$/, "");
  const spec = resolved(orderText("thrift", count, "", hand), {}, { designs: { thrift: text } });
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems, undefined, 1));
  return spec.value;
}
