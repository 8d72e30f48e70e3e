import type { Kernel } from "../../geometry/kernel.ts";
import { clashes } from "../../geometry/solid/clashes.ts";
import { type Facing, facing } from "../../geometry/solid/facing.ts";
import { mesh } from "../../geometry/solid/mesh.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import type { TriangleMesh } from "../../geometry/solid/triangle-mesh.ts";
import { type Fit, fitsOf } from "../../instrument/assembly/fits.ts";
import { stringSolid } from "../../instrument/assembly/strings.ts";
import { strungOf } from "../../instrument/assembly/strung.ts";
import { coreAxes } from "../../instrument/core/from-core.ts";
import type { Store } from "../../step/store.ts";
import type { Model } from "../model.ts";

/** A part by its name, and its mesh, right-handed. */
export type MeshedPart = { readonly name: string; readonly mesh: TriangleMesh };

/** How two parts stand to each other, measured on their meshes; mm, mm², mm³, degrees. `facing` is nothing for parts that never meet. */
export type FitMeasured = {
  readonly fit: Fit;
  readonly interference: number;
  readonly gap: number;
  readonly facing: Facing | null;
};

/** How far a gap of parts that must be clear is measured beyond what must be between them, mm: more is enough. */
const enough = 0.5;

/** How far faces that should lie on each other are looked for, mm. */
const near = 0.3;

/** How true the meshes of strings are, mm. */
const chord = 0.02;

/** Every fit of an assembled instrument, measured on the meshes of its parts and on its strings as thin rods. */
export function assembled(
  { spec, instrument }: Model,
  parts: readonly MeshedPart[],
  kernel: Kernel,
  store: Store,
): readonly FitMeasured[] {
  const made = (name: string, solid: Solid): MeshedPart => {
    const outcome = mesh(kernel, solid, chord);
    if (outcome.kind !== "ok") throw new Error(`${name} can't be made a mesh: ${outcome.kind}`);
    return { name, mesh: outcome.mesh };
  };
  const cradle = instrument.corePockets.find(({ id }) => id === "cradle");
  const filled = cradle && {
    ...{ kind: "extrude" as const, outlines: [{ outer: cradle.path, holes: [] }] },
    ...{ base: -cradle.depth, height: cradle.depth },
  };
  const pickup = filled
    ? [made("pickup", { kind: "place", solid: filled, frame: coreAxes(instrument.core) })]
    : [];
  const strings = strungOf(spec, instrument).map((strung, i) =>
    made(`string.${spec.strings[i]!.name}`, store.answer(stringSolid, strung).value),
  );
  const standing = [...parts, ...pickup];
  const names = (list: readonly MeshedPart[]) => list.map(({ name }) => name);
  return measured(fitsOf(spec, names(standing), names(strings)), [...standing, ...strings], kernel);
}

/** Fits measured on the meshes that they name. */
export function measured(
  fits: readonly Fit[],
  meshes: readonly MeshedPart[],
  kernel: Kernel,
): readonly FitMeasured[] {
  const places = new Map(meshes.map(({ name }, i) => [name, i]));
  const pairs = fits.map((fit) => {
    const reach = fit.kind === "clear" ? fit.least + enough : enough;
    return { first: places.get(fit.first)!, second: places.get(fit.second)!, reach };
  });
  const found = clashes(
    kernel,
    meshes.map((part) => part.mesh),
    pairs,
  );
  return fits.map((fit, i) => {
    const { first, second } = pairs[i]!;
    // Beside what is let in there is a gap, and that is no joint.
    const reach = fit.kind === "let-in" ? Math.min(near, fit.clearance / 2) : near;
    const faces = fit.kind === "clear" ? null : facing(meshes[first]!.mesh, meshes[second]!.mesh, reach);
    return { fit, ...found[i]!, facing: faces };
  });
}
