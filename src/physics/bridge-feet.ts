import type { SpecFace } from "../order/spec.ts";

/**
 * The middles of a bridge's two feet along y, mm, treble positive: of the outermost stretches of its outline that lie straight on
 * the core's front. An outline with one such stretch stands on all of it, and the quarter points stand for feet; one with none
 * stands on its frame's.
 */
export function bridgeFeet({ edges, along }: Pick<SpecFace, "edges" | "along">): {
  readonly bass: number;
  readonly treble: number;
} {
  const stretches = edges.flatMap((edge, i): [from: number, to: number][] => {
    const start = edges.at(i - 1)!.to;
    if (start === null || edge.to === null || edge.through.length > 0) return [];
    return start[1] === 0 && edge.to[1] === 0 ? [[start[0], edge.to[0]]] : [];
  });
  const whole = [0, along] as const;
  const [first, last] = [stretches[0] ?? whole, stretches.at(-1) ?? whole] as const;
  const middle = ([from, to]: readonly [number, number], share: number) =>
    from + (to - from) * share - along / 2;
  const one = stretches.length < 2;
  const feet = [middle(first, one ? 0.25 : 0.5), middle(last, one ? 0.75 : 0.5)];
  return { bass: Math.min(...feet), treble: Math.max(...feet) };
}
