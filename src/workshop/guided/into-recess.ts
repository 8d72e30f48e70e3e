import type { Cutter, Guide } from "../../order/shop.ts";

/** A recess to cut: how deep it is, and how thick the template over it, mm. */
type Into = { readonly depth: number; readonly template: number };

/**
 * How long a cutter cuts at least to reach a recess's floor, mm: through its template where that lies between machine and work, since nothing is
 * known of its shank; a bearing on the shank rides where the template was, and a pin lies on the face away from the bit.
 */
export function lengthWanted(kind: Guide["kind"], { depth, template }: Into): number {
  return kind === "bush" ? depth + template : depth;
}

/**
 * How deep a bit is set at least so that more than half of a bearing on its shank bears on a template so thick, mm; 0 for every other guide, which
 * doesn't go down with the bit.
 */
export function firstDepth(
  { cutter, guide }: { readonly cutter: Cutter; readonly guide: Guide },
  template: number,
): number {
  return guide.kind === "bearing" ? Math.max(0, cutter.length + guide.height / 2 - template) : 0;
}
