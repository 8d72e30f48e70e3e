import type { Model } from "../model.ts";
import { boardJigs } from "./board-jigs.ts";
import { caulJigs } from "./caul-jigs.ts";
import { drillJigs } from "./drill-jigs.ts";
import { fretJigs } from "./fret-jigs.ts";
import type { Jig } from "./jig.ts";
import { type PrintRules, printRules } from "./print-rules.ts";
import { stringJigs } from "./string-jigs.ts";
import { wingJigs } from "./wing-jigs.ts";

const makers: readonly ((model: Model, rules: PrintRules) => readonly Jig[])[] = [
  ...[boardJigs, fretJigs, stringJigs, drillJigs, wingJigs, caulJigs],
];

/** Every printed jig of an order beside the neck's gauges; `none` where the shop has no printer that could make them. */
export function jigsOf(
  model: Model,
):
  | { readonly kind: "none" }
  | { readonly kind: "ok"; readonly rules: PrintRules; readonly jigs: readonly Jig[] } {
  const rules = printRules(model.spec.shop);
  if (rules === null) return { kind: "none" };
  return { kind: "ok", rules, jigs: makers.flatMap((make) => make(model, rules)) };
}
