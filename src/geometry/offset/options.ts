/**
 * How an offset turns corners that it has to go round. `round`: by an arc about the corner. `mitre`: the neighbours are
 * led on straight until they meet, unless they would meet farther than `mitreLimit` times the distance from the corner;
 * that corner is rounded. 2 lets corners of 60 degrees and more be mitred.
 */
export type OffsetOptions = { readonly corners?: "round" | "mitre"; readonly mitreLimit?: number };

/** The options with what is not said filled in. */
export function completed(options: OffsetOptions = {}): Required<OffsetOptions> {
  return { corners: options.corners ?? "round", mitreLimit: options.mitreLimit ?? 2 };
}
