/** Options that stand for one value. */
const single = ["strings", "hand", "out", "format"];

/** How a usage that can't be told from names alone is named, before the names that it is about. */
export const misgivenAs = {
  twice: "Given twice: ",
  empty: "Given empty: ",
  bare: "After two hyphens: ",
} as const;

/**
 * What is wrong with a parsed command line although each word on it is known: a single option given twice (the parser makes a list
 * of it), an option or a name that is empty, anything after a bare `--`. True when nothing is.
 */
export function misgiven(argv: Readonly<Record<string, unknown>>): string | true {
  const names = Object.keys(argv).filter((name) => /^[a-z]+$/.test(name));
  const twice = names.filter((name) => single.includes(name) && Array.isArray(argv[name]));
  const empty = names.filter((name) => [argv[name]].flat().includes(""));
  if (argv["--"] !== undefined) return misgivenAs.bare;
  if (twice.length > 0) return misgivenAs.twice + twice.join(", ");
  return empty.length === 0 || misgivenAs.empty + empty.join(", ");
}
