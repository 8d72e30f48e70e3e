import type { Model } from "../../../workshop/model.ts";
import type { Filed } from "../../../workshop/sequence/work-step.ts";
import { solidFiles } from "../../../workshop/solids/solids.ts";
import { flatsOf } from "../../flat/flats.ts";

/** The files of a model's pack that are worked by: its flat drawings, and what is printed. Solids of parts are for looking at. */
export function filedOf(model: Model): readonly Filed[] {
  const printed = solidFiles(model).filter(({ folder }) => folder === "printed");
  return [...flatsOf(model.spec), ...printed].map(({ name, folder }) => ({ name, folder }));
}
