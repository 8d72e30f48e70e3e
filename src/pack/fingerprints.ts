import { fingerprintOf } from "../step/key.ts";

/** The fingerprints of an order's files by name, from their keys. No two files share a name. */
export function fingerprints(
  files: readonly { readonly name: string; readonly key: string }[],
): ReadonlyMap<string, string> {
  return new Map(files.map(({ name, key }) => [name, fingerprintOf(key)]));
}
