import type { Bench, Kernel, Shape } from "../kernel.ts";
import { tolerance } from "../tolerance.ts";
import { build } from "./build.ts";
import { contactArea } from "./contact-area.ts";
import { isChord } from "./facet.ts";
import { meshMeasures } from "./mesh-measures.ts";
import type { Solid, SolidFault } from "./solid.ts";
import type { TriangleMesh } from "./triangle-mesh.ts";

/**
 * How two solids stand to each other: the volume in both (mm³), the area over which they touch (mm²), and the least gap
 * (mm; 0 where they touch or interfere). `empty`: one of them has nothing left. A fault says by `of` whose it is.
 */
export type Clash =
  | { readonly kind: "ok"; readonly interference: number; readonly contact: number; readonly gap: number }
  | { readonly kind: "empty" }
  | (SolidFault & { readonly of: "first" | "second" });

/**
 * Measures the clash of two solids at a chord error (mm): curved faces are true to that only. Faces that touch may show an
 * interference of their area times a hundred-thousandth of a mm, from rounding.
 */
export function clash(kernel: Kernel, first: Solid, second: Solid, chord: number = tolerance.chord): Clash {
  if (!isChord(chord)) {
    return { kind: "invalid", problem: "chord", at: first.kind, of: "first" };
  }
  return kernel.work((bench): Clash => {
    const a = build(bench, first, chord);
    if (a.kind !== "ok") return { ...a, of: "first" };
    const b = build(bench, second, chord);
    if (b.kind !== "ok") return { ...b, of: "second" };
    if (!bench.isSound(a.shape)) return { kind: "invalid", problem: "refused", at: first.kind, of: "first" };
    if (!bench.isSound(b.shape))
      return { kind: "invalid", problem: "refused", at: second.kind, of: "second" };
    if (bench.isEmpty(a.shape) || bench.isEmpty(b.shape)) return { kind: "empty" };
    const [ours, theirs] = [bench.mesh(a.shape), bench.mesh(b.shape)];
    const interference = Math.max(0, bench.volume(bench.intersect([a.shape, b.shape])));
    const gap = interference > 0 ? 0 : leastGap(bench, a.shape, b.shape, boxes(ours, theirs));
    return { kind: "ok", interference, contact: contactArea(ours, theirs), gap };
  });
}

/** The gap of two meshes' boxes and the length of the box round both: the least and the most that their own gap can be. */
function boxes(a: TriangleMesh, b: TriangleMesh): { least: number; most: number } {
  const [m, n] = [meshMeasures(a), meshMeasures(b)];
  const axes = ["x", "y", "z"] as const;
  const apart = axes.map((k) => Math.max(0, m.least[k] - n.most[k], n.least[k] - m.most[k]));
  const whole = axes.map((k) => Math.max(m.most[k], n.most[k]) - Math.min(m.least[k], n.least[k]));
  return { least: Math.hypot(...apart), most: Math.hypot(...whole) };
}

/** Looks wider and wider, because a wide look at once would compare every triangle with every other. */
function leastGap(
  bench: Bench,
  a: Shape,
  b: Shape,
  { least, most }: { least: number; most: number },
): number {
  for (let reach = least + 1; reach < 2 * most; reach *= 2) {
    const gap = bench.gap(a, b, reach);
    if (gap < reach) return gap;
  }
  return bench.gap(a, b, 2 * most + 1);
}
