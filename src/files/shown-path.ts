import { resolve as absolute, relative } from "node:path";

/** A path as messages show it: from the current folder where it lies inside it. */
export function shownPath(file: string): string {
  const short = relative(process.cwd(), absolute(file));
  return short.startsWith("..") ? absolute(file) : short;
}
