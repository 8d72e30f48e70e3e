import { type Fault, plain } from "./fault.ts";

/** How far the saw wanders from its line, mm, counted as wood to remove (G: default, confirm). */
export const sawWander = 0.5;

/** How much larger in diameter the first guide is than the final one, and so what it leaves for that, mm. */
export const firstGuide = { larger: 2, leaves: 1 } as const;

/** What the last pass takes off at most, mm: on a shaper (S), trimming an edge on a router (G: default, confirm). */
export const lastPass = { shaper: 1.6, router: 1.5 } as const;

/** One pass along the guided edge: with which guide, and how much wood it takes off, mm. */
export type Pass = { readonly guide: string; readonly takes: number };

/** The two guides that ride on one template: the final one, and a first one 2.0 larger in diameter where there is one. */
export type Guides = { readonly final: string; readonly first: string | null };

/**
 * The passes that take off the saw's allowance (mm) and its wander: a first guide leaves 1.0 for the final one, and without one
 * all goes at once.
 */
export function passesOf(allowance: number, { final, first }: Guides): readonly Pass[] {
  const all = allowance + sawWander;
  if (first === null || all <= firstGuide.leaves + 1e-9) return [{ guide: final, takes: all }];
  return [
    { guide: first, takes: all - firstGuide.leaves },
    { guide: final, takes: firstGuide.leaves },
  ];
}

/**
 * What is too much in some passes: the last one over what a last pass may take, or the first one of several over what the
 * machine's manual allows (mm, null where the shop's file doesn't say). The last pass is told first.
 */
export function removalFaults(
  kind: "shaper" | "router",
  passes: readonly Pass[],
  firstMost: number | null,
): Fault[] {
  const [last, first] = [passes.at(-1)!, passes.length > 1 ? passes[0]! : undefined];
  const faults: Fault[] = [];
  const tell = (found: number, limit: number, why: string) =>
    faults.push({ check: "removal", found, limit, unit: "mm", why });
  const most = lastPass[kind];
  if (last.takes > most + 1e-6)
    tell(
      last.takes,
      most,
      `${last.guide} takes ${plain(last.takes)} mm at once, over ${most}: add a guide ${firstGuide.larger} mm larger in diameter for a first pass, or lower saw.allowance to ${plain(most - sawWander)} mm`,
    );
  if (first !== undefined && firstMost !== null && first.takes > firstMost + 1e-6)
    tell(
      first.takes,
      firstMost,
      `${first.guide} takes ${plain(first.takes)} mm in the first pass, over the machine's own ${plain(firstMost)}: lower saw.allowance to ${plain(firstMost + firstGuide.leaves - sawWander)} mm`,
    );
  return faults;
}
