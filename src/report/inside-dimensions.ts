import { allInsides, type InsideName, insideApplies } from "../order/inside-names.ts";
import type { Spec } from "../order/spec.ts";
import type { Inside } from "../workshop/inside/inside.ts";
import { insideNamed } from "../workshop/inside/insides.ts";
import type { Model } from "../workshop/model.ts";
import { type Dimension, length } from "./dimension.ts";

/** How far a virtual cut's deviation may move before a comparison counts it, mm: half of what refuses it. */
const cutTolerance = 0.005;

/** What is worked out of the inside templates; nothing where a spec has none. */
export function insideDimensions(spec: Spec): Dimension[] {
  return allInsides.filter((name) => insideApplies(name, spec)).flatMap(ofInside);
}

function ofInside({ file, part }: InsideName): Dimension[] {
  const of = (model: Model) => insideNamed(model.insides(), file);
  const named = (id: string, label: string, worked: (inside: Inside) => number) =>
    length(part, id, `${label} (template ${file})`, (model) => worked(of(model)));
  return [
    named(
      `fixture.${file}.offset`,
      "Guided edge out from the finished one into the recess, 0 without a set-up",
      ({ setUp }) => setUp?.offset ?? 0,
    ),
    {
      ...named(
        `virtual-cut.${file}`,
        "Greatest deviation of the virtual cut from a finished recess, the deepest recess's depth where nothing is cut",
        deviation,
      ),
      tolerance: cutTolerance,
    },
  ];
}

function deviation({ openings }: Inside): number {
  return Math.max(...openings.map(({ cut, depth }) => (cut?.kind === "ok" ? cut.deviation : depth)));
}
