import { signedArea } from "../measure.ts";
import type { Point } from "../point.ts";
import { tolerance } from "../tolerance.ts";
import { facet, facetCounts } from "./facet.ts";
import { frameProblem, fromFrame, mirrors } from "./frame.ts";
import { pathProblem } from "./outline-rings.ts";
import { ringsCross } from "./rings-cross.ts";
import type { Section, SolidProblem } from "./solid.ts";
import { between, cross, dot, type Vec3 } from "./vec3.ts";

/**
 * The layers of a loft, from first to last, as many vertices in each (one at a tip); the flat rings of its ends, empty at
 * a tip; whether the layers run clockwise seen from the last. Or what is wrong with the sections.
 */
export type LoftLayers =
  | {
      readonly kind: "ok";
      readonly layers: readonly (readonly Vec3[])[];
      readonly first: readonly Point[];
      readonly last: readonly Point[];
      readonly clockwise: boolean;
    }
  | { readonly kind: "bad"; readonly problem: SolidProblem };

type PathSection = Extract<Section, { kind: "path" }>;
type Cut = { readonly layer: readonly Vec3[]; readonly flat: readonly Point[]; readonly normal: Vec3 };

/** Facets the sections of a loft by chord error (mm), with layers between where the walls twist by more than that. */
export function loftLayers(sections: readonly Section[], chord: number): LoftLayers {
  const paths = sections.filter((s): s is PathSection => s.kind === "path");
  const inner = sections.slice(1, -1);
  const problem =
    sectionProblem(sections, paths) ??
    (inner.every((s) => s.kind === "path") ? undefined : "sections-differ");
  if (problem) return { kind: "bad", problem };
  const counts = paths.map(({ path }) => facetCounts(path, chord));
  const most = counts[0]!.map((_, i) => Math.max(...counts.map((list) => list[i]!)));
  const cuts = sections.map((section): Cut => cutOf(section, most));
  if (cuts.some(({ flat }) => ringsCross([flat]))) return { kind: "bad", problem: "crosses-itself" };
  const side = commonSide(cuts);
  if (side === 0) return { kind: "bad", problem: "sections-cross" };
  const layers: (readonly Vec3[])[] = [cuts[0]!.layer];
  for (let i = 1; i < cuts.length; i++) {
    layers.push(...layersBetween(cuts[i - 1]!.layer, cuts[i]!.layer, chord), cuts[i]!.layer);
  }
  return { kind: "ok", layers, first: cuts[0]!.flat, last: cuts.at(-1)!.flat, clockwise: side < 0 };
}

function sectionProblem(
  sections: readonly Section[],
  paths: readonly PathSection[],
): SolidProblem | undefined {
  if (sections.length < 2 || paths.length === 0) return "too-few-sections";
  for (const section of sections) {
    if (section.kind === "point") {
      const tip = [section.at.x, section.at.y, section.at.z];
      if (!tip.every(Number.isFinite)) return "not-finite";
      if (tip.some((value) => Math.abs(value) > tolerance.largest)) return "too-large";
      continue;
    }
    const problem = pathProblem(section.path) ?? frameProblem(section.frame);
    if (problem) return problem;
  }
  const first = paths[0]!;
  const alike = paths.every(
    ({ path, frame }) =>
      path.points.length === first.path.points.length &&
      Math.sign(signedArea(path)) === Math.sign(signedArea(first.path)) &&
      mirrors(frame) === mirrors(first.frame),
  );
  return alike ? undefined : "sections-differ";
}

/** A section's vertices in space and in its plane, and the side from which they run counter-clockwise. */
function cutOf(section: Section, counts: readonly number[]): Cut {
  if (section.kind === "point") return { layer: [section.at], flat: [], normal: { x: 0, y: 0, z: 0 } };
  const { path, frame } = section;
  const flat = facet(path, counts);
  const sign = Math.sign(signedArea(path)) * (mirrors(frame) ? -1 : 1);
  const normal = { x: sign * frame.w.x, y: sign * frame.w.y, z: sign * frame.w.z };
  return { layer: flat.map(({ x, y }) => fromFrame(frame, x, y, 0)), flat, normal };
}

/** 1 where each section lies wholly before the next one's plane and behind the last one's, -1 the other way round, else 0. */
function commonSide(cuts: readonly Cut[]): number {
  const sides = new Set<number>();
  for (let i = 1; i < cuts.length; i++) {
    const [a, b] = [cuts[i - 1]!, cuts[i]!];
    if (a.flat.length > 0)
      for (const p of b.layer) sides.add(Math.sign(dot(between(a.layer[0]!, p), a.normal)));
    if (b.flat.length > 0)
      for (const p of a.layer) sides.add(Math.sign(dot(between(p, b.layer[0]!), b.normal)));
  }
  const [side] = sides;
  return sides.size === 1 ? side! : 0;
}

/**
 * Layers between two, so many that the two triangles of each wall piece lie within the chord error of the ruled wall, and
 * of even number where the wall twists by more than a twentieth of that, so that what the diagonals take they give back.
 */
function layersBetween(a: readonly Vec3[], b: readonly Vec3[], chord: number): Vec3[][] {
  if (a.length !== b.length) return [];
  let twist = 0;
  for (const [i, p] of a.entries()) {
    const next = (i + 1) % a.length;
    twist = Math.max(twist, twistOf(p, a[next]!, b[i]!, b[next]!));
  }
  const count = twist > chord / 20 ? Math.min(1000, 2 * Math.ceil(twist / chord / 2)) : 1;
  return Array.from({ length: count - 1 }, (_, k) => {
    const t = (k + 1) / count;
    return a.map((p, i) => {
      const q = b[i]!;
      return { x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y), z: p.z + t * (q.z - p.z) };
    });
  });
}

/** How far, in its middle, the ruled piece between the ways p to q and r to s stands off the triangles over a diagonal. */
function twistOf(p: Vec3, q: Vec3, r: Vec3, s: Vec3): number {
  const normal = cross(between(p, s), between(q, r));
  const size = Math.sqrt(dot(normal, normal));
  return size === 0 ? 0 : Math.abs(dot(between(between(p, q), between(r, s)), normal)) / size / 4;
}
