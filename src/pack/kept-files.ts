import { hashOf } from "../step/key.ts";
import type { PackFile } from "./pack-file.ts";

/** Files made before, by all that they follow from: whoever makes packs of one order again and again, such as after each edit, keeps it between them. */
export type KeptFiles = Map<string, readonly PackFile[]>;

/** Files from what they follow from, plain data; made if they aren't kept, or if nothing is. */
export async function keptFiles(
  kept: KeptFiles | undefined,
  from: readonly unknown[],
  make: () => readonly PackFile[] | Promise<readonly PackFile[]>,
): Promise<readonly PackFile[]> {
  if (kept === undefined) return make();
  const key = hashOf(JSON.stringify(from));
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = await make();
  kept.set(key, made);
  return made;
}
