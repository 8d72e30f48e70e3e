import { fingerprintOf } from "../step/key.ts";

type Keyed = { readonly name: string; readonly key: string };

/** The fingerprints of an order's drawings and solids by name, from their keys; a solid's name ends in `.stl`, since a part's outline may share it. */
export function printsOf(drawings: readonly Keyed[], solids: readonly Keyed[]): ReadonlyMap<string, string> {
  const files = [...drawings, ...solids.map(({ name, key }) => ({ name: `${name}.stl`, key }))];
  return new Map(files.map(({ name, key }) => [name, fingerprintOf(key)]));
}
