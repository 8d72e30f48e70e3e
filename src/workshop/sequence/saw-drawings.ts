import type { Model } from "../model.ts";

/** The drawings of saw lines that a model's pack has, by their files' names. */
export function sawDrawings(_: Model): readonly string[] {
  return ["neck-saw-plan", "neck-saw-side"];
}
