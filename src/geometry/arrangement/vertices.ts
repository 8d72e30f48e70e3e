import { tolerance } from "../tolerance.ts";
import type { Contacts } from "./contacts.ts";
import type { Edge } from "./edge.ts";

/** The places where edges of an arrangement meet, by number: which numbers are one place, and where it is. */
export type Vertices = {
  /** The least number that stands for the same place. */
  readonly root: (vertex: number) => number;
  /** Whether anything but one edge following another happens there. */
  readonly junction: (root: number) => boolean;
  readonly x: (root: number) => number;
  readonly y: (root: number) => number;
};

/** Brings together contacts that are one place within `tolerance.snap`. */
export function verticesOf(edges: readonly Edge[], contacts: Contacts): Vertices {
  const count = edges.length;
  const parent = new Map<number, number>();
  const root = (vertex: number): number => {
    let at = vertex;
    for (let up = parent.get(at); up !== undefined; up = parent.get(at)) at = up;
    return at;
  };
  const unite = (a: number, b: number) => {
    const [p, q] = [root(a), root(b)];
    if (p !== q) parent.set(Math.max(p, q), Math.min(p, q));
  };
  const x = (vertex: number) => (vertex < count ? edges[vertex]!.ax : contacts.x[vertex - count]!);
  const y = (vertex: number) => (vertex < count ? edges[vertex]!.ay : contacts.y[vertex - count]!);

  const met = new Set(contacts.joined);
  for (let k = 1; k < contacts.cuts.length; k += 2) met.add(contacts.cuts[k]!);
  for (let k = 0; k < contacts.joined.length; k += 2) unite(contacts.joined[k]!, contacts.joined[k + 1]!);
  uniteNeighbours([...met], x, y, unite);
  const junctions = new Set([...met].map(root));
  return { root, junction: (at) => junctions.has(at), x, y };
}

/** Unites vertices within the tolerance of one another: sorted along x, so that each is held against a few only. */
function uniteNeighbours(
  met: number[],
  x: (vertex: number) => number,
  y: (vertex: number) => number,
  unite: (a: number, b: number) => void,
) {
  const { snap } = tolerance;
  met.sort((a, b) => x(a) - x(b) || a - b);
  for (let i = 0; i < met.length; i++) {
    for (let j = i + 1; j < met.length && x(met[j]!) - x(met[i]!) < snap; j++)
      if (Math.abs(y(met[j]!) - y(met[i]!)) < snap) unite(met[i]!, met[j]!);
  }
}
