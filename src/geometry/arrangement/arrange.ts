import type { Chain } from "./chain.ts";
import { contactsOf, indexOf } from "./contacts.ts";
import { facesOf } from "./faces.ts";
import { type Fans, fansOf } from "./fan.ts";
import { type Run, runsOf } from "./runs.ts";
import { verticesOf } from "./vertices.ts";

/**
 * Closed loops cut where they meet. `windings` holds, for each half of a run (2k as run k goes, 2k + 1 backwards), the
 * winding of the face to its left.
 */
export type Arrangement = {
  readonly runs: readonly Run[];
  readonly fans: Fans;
  readonly windings: Int32Array;
};

/**
 * Cut closed loops of edges where they meet and find the winding of every face.
 *
 * What lies on one another within `tolerance.snap` counts as one. Loops may cross, touch and overlap one another and
 * themselves in any way.
 */
export function arrange(chain: Chain): Arrangement {
  const arrangement = arrangeUpTo(chain, Number.POSITIVE_INFINITY);
  return arrangement === "crowded" ? nothing : arrangement;
}

const nothing: Arrangement = { runs: [], fans: new Map(), windings: new Int32Array() };

/** The same, but given up as `crowded` where edges are cut at more than `most` places. */
export function arrangeUpTo(chain: Chain, most: number): Arrangement | "crowded" {
  if (chain.edges.length === 0) return nothing;
  const index = indexOf(chain.edges);
  const contacts = contactsOf(chain, index, most);
  if (contacts.cuts.length > 2 * most) return "crowded";
  if (contacts.cuts.length === 0 && contacts.joined.length === 0) {
    const runs = wholeLoops(chain);
    return { runs, ...facesOf(runs, nothing.fans, chain.edges, index) };
  }
  const runs = runsOf(chain, contacts, verticesOf(chain.edges, contacts));
  const edges = runs.flatMap((run) => run.edges);
  if (edges.length === 0) return nothing;
  return { runs, ...facesOf(runs, fansOf(runs), edges, indexOf(edges)) };
}

/** Loops that meet nothing, each a run by itself. */
function wholeLoops({ edges, starts }: Chain): Run[] {
  return starts.map((start, k) => {
    const loop = edges.slice(start, starts[k + 1] ?? edges.length);
    return { from: -1, to: -1, edges: loop, weight: loop[0]!.weight };
  });
}
