import type { Kernel } from "../../geometry/kernel.ts";
import { clashes } from "../../geometry/solid/clashes.ts";
import { type Facing, facing } from "../../geometry/solid/facing.ts";
import { mesh } from "../../geometry/solid/mesh.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import type { TriangleMesh } from "../../geometry/solid/triangle-mesh.ts";
import { type Fit, fitsOf } from "../../instrument/assembly/fits.ts";
import { stringSolid } from "../../instrument/assembly/strings.ts";
import { strungOf } from "../../instrument/assembly/strung.ts";
import type { CoreFrame } from "../../instrument/core/frame.ts";
import { coreAxes } from "../../instrument/core/from-core.ts";
import type { CorePocket } from "../../instrument/neck/core-pockets.ts";
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

/** All that stands in an assembled instrument, and how each two of it are meant to stand to each other. */
export type Standing = { readonly meshes: readonly MeshedPart[]; readonly fits: readonly Fit[] };

/** Every fit of an assembled instrument, measured on the meshes of its parts and on its strings as thin rods. */
export function assembled(
  model: Model,
  parts: readonly MeshedPart[],
  kernel: Kernel,
  store: Store,
): readonly FitMeasured[] {
  return measured(standing(model, parts, kernel, store), kernel);
}

/** What stands in an instrument beside its parts: what lies in its cradle, and its strings as thin rods; each by its name and its recipe. */
export type StandingBy = {
  readonly pickup: readonly NamedSolid[];
  readonly strings: readonly NamedSolid[];
  readonly fits: readonly Fit[];
};

/** A solid and what it is called. */
export type NamedSolid = { readonly name: string; readonly solid: Solid };

/** What stands beside an instrument's parts, and the fits among all. */
export function standingBy({ spec, instrument }: Model, parts: readonly string[], store: Store): StandingBy {
  const pickup = instrument.corePockets
    .filter(({ id }) => id === "cradle")
    .map((cradle) => ({ name: "pickup", solid: filled(cradle, instrument.core) }));
  const strings = strungOf(spec, instrument).map((strung, i) => ({
    ...{ name: `string.${spec.strings[i]!.name}`, solid: store.answer(stringSolid, strung).value },
  }));
  const names = (list: readonly NamedSolid[]) => list.map(({ name }) => name);
  return { pickup, strings, fits: fitsOf(spec, [...parts, ...names(pickup)], names(strings)) };
}

/** An instrument's parts with what stands beside them, meshed, and the fits among them. */
export function standing(model: Model, parts: readonly MeshedPart[], kernel: Kernel, store: Store): Standing {
  const by = standingBy(
    model,
    parts.map(({ name }) => name),
    store,
  );
  return stoodBy(parts, by, kernel);
}

/** Parts with what stands beside them, meshed. */
export function stoodBy(parts: readonly MeshedPart[], by: StandingBy, kernel: Kernel): Standing {
  const made = ({ name, solid }: NamedSolid): MeshedPart => {
    const outcome = mesh(kernel, solid, chord);
    if (outcome.kind !== "ok") throw new Error(`${name} can't be made a mesh: ${outcome.kind}`);
    return { name, mesh: outcome.mesh };
  };
  return { meshes: [...parts, ...by.pickup.map(made), ...by.strings.map(made)], fits: by.fits };
}

/** What lies in a cradle, its top flush with the core's front. */
function filled({ path, depth }: CorePocket, core: CoreFrame): Solid {
  const solid: Solid = {
    kind: "extrude",
    outlines: [{ outer: path, holes: [] }],
    base: -depth,
    height: depth,
  };
  return { kind: "place", solid, frame: coreAxes(core) };
}

/** Fits measured on the meshes that they name. */
export function measured({ fits, meshes }: Standing, kernel: Kernel): readonly FitMeasured[] {
  const places = new Map(meshes.map(({ name }, i) => [name, i]));
  const pairs = fits.map((fit) => {
    const reach = fit.kind === "clear" ? fit.least + enough : enough;
    return {
      ...{ first: places.get(fit.first)!, second: places.get(fit.second)!, reach },
      touch: fit.kind !== "clear",
    };
  });
  const all = meshes.map((part) => part.mesh);
  return clashes(kernel, all, pairs, ({ interference, gap }, i): FitMeasured => {
    const fit = fits[i]!;
    if (fit.kind === "clear") return { fit, interference, gap: gap(), facing: null };
    // Beside what is let in there is a gap, and that is no joint.
    const reach = fit.kind === "let-in" ? Math.min(near, fit.clearance / 2) : near;
    const faces = facing(all[pairs[i]!.first]!, all[pairs[i]!.second]!, reach);
    return { fit, interference, gap: faces.area > 0 ? gapOf(interference, faces) : gap(), facing: faces };
  });
}

/** Two faces that lie near each other show the gap; where there is a volume in both there is none. */
function gapOf(interference: number, { least }: Facing): number {
  return interference > 0 ? 0 : least;
}
