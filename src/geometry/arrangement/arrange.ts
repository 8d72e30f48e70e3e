import type { Chain } from "./chain.ts";
import { contactsOf, indexOf } from "./contacts.ts";
import { windingsOf } from "./faces.ts";
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
  if (chain.edges.length === 0) return { runs: [], fans: new Map(), windings: new Int32Array() };
  const index = indexOf(chain.edges);
  const contacts = contactsOf(chain, index);
  const runs = runsOf(chain, contacts, verticesOf(chain.edges, contacts));
  const fans = fansOf(runs);
  const edges = runs.flatMap((run) => run.edges);
  if (edges.length === 0) return { runs: [], fans, windings: new Int32Array() };
  const uncut =
    contacts.cuts.length === 0 && contacts.joined.length === 0 && edges.length === chain.edges.length;
  return { runs, fans, windings: windingsOf(runs, fans, edges, uncut ? index : indexOf(edges)) };
}
