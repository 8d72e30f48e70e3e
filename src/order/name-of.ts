/**
 * The dotted name that a path stands for; a dimension goes by its own name wherever it is written, and what has no name is
 * the file itself.
 */
export function nameOf(path: readonly PropertyKey[]): string {
  const own = path[0] === "set" || path[0] === "dimensions" ? path.slice(1) : path;
  const name = (own.length === 0 ? path : own).map(String).join(".");
  return name === "" ? "the file" : name;
}
