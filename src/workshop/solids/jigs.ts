import { jigsOf } from "../jigs/jigs.ts";
import type { SolidFiles } from "./solid-file.ts";

/** The printed jigs of an order, each piece a file; none for a shop without a printer, and none of a jig that its bed doesn't hold. */
export const jigFiles: SolidFiles = (model) => {
  const made = jigsOf(model);
  return made.kind === "none" ? [] : made.jigs.flatMap(({ files }) => files);
};
