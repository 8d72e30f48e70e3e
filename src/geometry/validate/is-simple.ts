import { arrange } from "../arrangement/arrange.ts";
import type { Chain } from "../arrangement/chain.ts";
import { contactsOf, indexOf } from "../arrangement/contacts.ts";

/**
 * Whether closed loops wind round every place 0 times or `winding` times (1 or -1): they may touch themselves and one
 * another but not cross, and lie within one another only in turns of outer and hole.
 */
export function isSimple(chain: Chain, winding: 1 | -1): boolean {
  if (chain.edges.length === 0) return true;
  if (chain.starts.length === 1) {
    const { cuts, joined } = contactsOf(chain, indexOf(chain.edges));
    if (cuts.length === 0 && joined.length === 0) return true;
  }
  return arrange(chain).windings.every((found) => found === 0 || found === winding);
}
