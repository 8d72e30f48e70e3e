import type { Bench, Shape } from "../kernel.ts";
import type { Point } from "../point.ts";
import { tolerance } from "../tolerance.ts";
import { edgeProfile, isEdge } from "./edge-profile.ts";
import { frameProblem, upright } from "./frame.ts";
import { insetRing } from "./inset-ring.ts";
import { layeredMesh } from "./layered-mesh.ts";
import { loftLayers } from "./loft-layers.ts";
import { meshProblem } from "./mesh-problem.ts";
import { type OutlineRings, outlineRings } from "./outline-rings.ts";
import type { Solid, SolidFault, SolidProblem } from "./solid.ts";
import type { TriangleMesh } from "./triangle-mesh.ts";

/** A recipe made into a shape of the kernel, or its first fault. */
export type Built = { readonly kind: "ok"; readonly shape: Shape } | SolidFault;

type Kind<K extends Solid["kind"]> = Extract<Solid, { kind: K }>;

/**
 * Makes a recipe on the kernel's bench, faceted by chord error (mm), each input checked before the kernel sees it. `at`
 * says where in a larger recipe this one stands.
 */
export function build(bench: Bench, solid: Solid, chord: number, at = ""): Built {
  const here = at === "" ? solid.kind : `${at}.${solid.kind}`;
  switch (solid.kind) {
    case "extrude":
      return extrude(bench, solid, chord, here);
    case "loft":
      return loft(bench, solid, chord, here);
    case "mesh": {
      const problem = meshProblem(solid.mesh);
      return problem ? fault(problem, here) : fromMesh(bench, solid.mesh, here);
    }
    case "place": {
      const misplaced = frameProblem(solid.frame);
      if (misplaced) return fault(misplaced, here);
      const inner = build(bench, solid.solid, chord, here);
      return inner.kind === "ok" ? { kind: "ok", shape: bench.place(inner.shape, solid.frame) } : inner;
    }
    case "union":
      return combined(bench, solid.solids, chord, here, "", bench.union);
    case "intersect":
      return combined(bench, solid.solids, chord, here, "", bench.intersect);
    case "cut": {
      const from = build(bench, solid.from, chord, `${here}.from`);
      if (from.kind !== "ok" || solid.by.length === 0) return from;
      const join = (shapes: readonly Shape[]) => bench.cut([from.shape, ...shapes]);
      return combined(bench, solid.by, chord, here, ".by", join);
    }
  }
}

function fault(problem: SolidProblem, at: string): SolidFault {
  return { kind: "invalid", problem, at };
}

function combined(
  bench: Bench,
  solids: readonly Solid[],
  chord: number,
  at: string,
  field: string,
  join: (shapes: readonly Shape[]) => Shape,
): Built {
  if (solids.length === 0) return fault("nothing-given", at);
  const shapes: Shape[] = [];
  for (const [i, solid] of solids.entries()) {
    const part = build(bench, solid, chord, `${at}${field}[${i}]`);
    if (part.kind !== "ok") return part;
    shapes.push(part.shape);
  }
  return { kind: "ok", shape: join(shapes) };
}

function fromMesh(bench: Bench, mesh: TriangleMesh, at: string): Built {
  const made = bench.ofMesh(mesh);
  if (made.kind !== "ok") return fault("refused", at);
  return bench.volume(made.shape) > 0 ? made : fault("inside-out", at);
}

function extrude(bench: Bench, solid: Kind<"extrude">, chord: number, at: string): Built {
  const { outlines, base = 0, height, top, bottom } = solid;
  if (!Number.isFinite(base) || !Number.isFinite(height)) return fault("not-finite", at);
  if (Math.abs(base) > tolerance.largest || Math.abs(height) > tolerance.largest)
    return fault("too-large", at);
  if (outlines.length === 0) return fault("nothing-given", at);
  if (!(height > 0)) return fault("no-height", at);
  const all: Rings[] = [];
  for (const outline of outlines) {
    const rings = outlineRings(outline, chord);
    if (rings.kind === "bad") return fault(rings.problem, at);
    all.push(rings);
  }
  const raised = top || bottom ? allEdged(bench, all, solid, chord, at) : plain(bench, all, height);
  if (raised.kind !== "ok") return raised;
  const { shape } = raised;
  if (base === 0) return { kind: "ok", shape };
  return { kind: "ok", shape: bench.place(shape, { ...upright, origin: { x: 0, y: 0, z: base } }) };
}

type Rings = Extract<OutlineRings, { kind: "ok" }>;

/** Outlines that lie over one another are joined as areas, before anything is raised. */
function plain(bench: Bench, all: readonly Rings[], height: number): Built {
  return {
    kind: "ok",
    shape: bench.extrude(
      all.flatMap(({ outer, holes }) => [outer, ...holes]),
      height,
    ),
  };
}

function allEdged(
  bench: Bench,
  all: readonly Rings[],
  solid: Kind<"extrude">,
  chord: number,
  at: string,
): Built {
  const shapes: Shape[] = [];
  for (const rings of all) {
    const part = edged(bench, rings, solid, chord, at);
    if (part.kind !== "ok") return part;
    shapes.push(part.shape);
  }
  return { kind: "ok", shape: shapes.length === 1 ? shapes[0]! : bench.union(shapes) };
}

/** An extrusion with edges taken off the outer wall: that wall as a mesh of insets, then the holes cut. */
function edged(bench: Bench, rings: Rings, solid: Kind<"extrude">, chord: number, at: string): Built {
  const { height, top, bottom } = solid;
  if ([top, bottom].some((edge) => edge && !isEdge(edge))) return fault("edge-without-room", at);
  const low = bottom ? edgeProfile(bottom, chord).reverse() : [{ x: 0, y: 0 }];
  const high = top ? edgeProfile(top, chord) : [{ x: 0, y: 0 }];
  const levels: Point[] = [...low, ...high.map(({ x, y }) => ({ x, y: height - y }))];
  const meeting = low.at(-1)!.y;
  if (meeting > height - high[0]!.y) return fault("edge-without-room", at);
  if (meeting === height - high[0]!.y) levels.splice(low.length, 1);
  const layers: { x: number; y: number; z: number }[][] = [];
  const flats: (readonly Point[])[] = [];
  for (const { x: inward, y: z } of levels) {
    const inset = insetRing(rings.outer, inward);
    if (inset.kind === "no-room") return fault("edge-without-room", at);
    flats.push(inset.ring);
    layers.push(inset.ring.map(({ x, y }) => ({ x, y, z })));
  }
  const [first, last] = [flats[0]!, flats.at(-1)!];
  const caps = { first: bench.triangulate([first]), last: bench.triangulate([last]) };
  const body = fromMesh(bench, layeredMesh(layers, caps, false), at);
  if (body.kind !== "ok" || rings.holes.length === 0) return body;
  const holes = rings.holes.map((hole) => bench.extrude([[...hole].reverse()], height));
  return { kind: "ok", shape: bench.cut([body.shape, ...holes]) };
}

function loft(bench: Bench, { sections }: Kind<"loft">, chord: number, at: string): Built {
  const made = loftLayers(sections, chord);
  if (made.kind === "bad") return fault(made.problem, at);
  const { layers, first, last, clockwise } = made;
  const caps = { first: filled(bench, first), last: filled(bench, last) };
  return fromMesh(bench, layeredMesh(layers, caps, clockwise), at);
}

/** The triangles that fill a ring of either winding, running as it does. */
function filled(bench: Bench, ring: readonly Point[]): readonly (readonly number[])[] {
  if (ring.length === 0) return [];
  const twice = ring.reduce((sum, p, i) => sum + ring.at(i - 1)!.x * p.y - p.x * ring.at(i - 1)!.y, 0);
  if (twice > 0) return bench.triangulate([ring]);
  const last = ring.length - 1;
  return bench.triangulate([[...ring].reverse()]).map(([a, b, c]) => [last - a!, last - c!, last - b!]);
}
