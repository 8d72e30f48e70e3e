import { hasSawDrawing, type SawDrawing } from "../../order/saw-names.ts";
import type { Model } from "../../workshop/model.ts";
import { type PartSawing, sawingNamed } from "../../workshop/part-sawing.ts";
import type { Check, Finding } from "../check.ts";

/** What one rule says of a part that is sawn: all of a finding but whose it is. */
export type SawnJudged = Omit<Finding, "id" | "subject" | "holds">;

/** A rule for parts that are sawn: the check's name without the file, and what it says. */
export type SawnRule = {
  readonly name: string;
  readonly of: (sawing: PartSawing, model: Model) => SawnJudged;
};

/** A rule as a check of one saw drawing: while it refuses, that file isn't written. */
export function sawnCheck({ name, of }: SawnRule, file: SawDrawing): Check {
  return {
    id: `${name}.${file}`,
    applies: (spec) => hasSawDrawing(spec, file),
    of: (model) => {
      const sawing = sawingNamed(model.partSawing(), file);
      return { ...of(sawing, model), subject: sawing.part, holds: [file] };
    },
  };
}
