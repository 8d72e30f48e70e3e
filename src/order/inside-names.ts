import type { RecessPart } from "./recess-part.ts";
import { recessParts } from "./recess-part.ts";
import type { Spec } from "./spec.ts";

/** An inside template's file: its name without ending, the part that openings are cut into, and from which face; inlays go into the fingerboard's front. */
export type InsideName = {
  readonly file: string;
  readonly part: RecessPart | "fingerboard";
  readonly face: "front" | "back";
};

/** Every inside template that there may be, in the order in which packs and checks list them. */
export const allInsides: readonly InsideName[] = [
  ...recessParts.flatMap((part) =>
    (["front", "back"] as const).map((face): InsideName => ({ file: `${part}-${face}-inside`, part, face })),
  ),
  { file: "inlays-inside", part: "fingerboard", face: "front" },
];

/** What says which faces have something routed into them. */
export type Routed = Pick<Spec, "recesses" | "rests" | "inlays" | "bridgeFoot" | "values">;

/** Whether a spec has something to rout for an inside template: a recess, a mount that a rest is moved in, a pickup's cradle in the core, an inlay. */
export function insideApplies({ part, face }: InsideName, spec: Routed): boolean {
  if (part === "fingerboard") return spec.inlays.length > 0;
  return (
    spec.recesses.some((recess) => recess.in === part && recess.from === face) ||
    (part === "neck" && face === "front" && spec.bridgeFoot.kind === "cradle") ||
    (face === "back" &&
      spec.rests.mounts.some(
        ({ in: on, kind }) => on === part && (spec.values[`rest.${kind}.travel`]?.value ?? 0) > 0,
      ))
  );
}

/** The names of a spec's inside templates. */
export function insideNames(spec: Routed): readonly string[] {
  return allInsides.filter((one) => insideApplies(one, spec)).map(({ file }) => file);
}
