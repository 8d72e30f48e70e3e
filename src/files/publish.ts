import { existsSync } from "node:fs";
import { mkdir, readdir, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";

/** A file to publish, by its path inside the folder. */
export type Published = { readonly path: string; readonly text: string };

/** Thrown when the place of a pack holds something that no pack is: nothing is touched. */
export class NotAPackError extends Error {
  constructor(folder: string) {
    super(
      `${folder} is there already and holds no manifest.json: it is no pack, so it is left alone; give another --out`,
    );
    this.name = "NotAPackError";
  }
}

const beside = (name: string, what: string) => `.${name}.${what}`;

/**
 * Put a folder of files into its place, whole or not at all.
 *
 * All files are written beside the place first; then the old folder is moved aside, the new one moved in and the old one removed.
 * Killed at any moment, the place holds the old folder whole or the new one whole, or the old one lies beside it; the next
 * call for the same place puts that back and clears what was left half written.
 */
export async function publish(out: string, name: string, files: readonly Published[]): Promise<string> {
  const place = join(out, name);
  await mkdir(out, { recursive: true });
  await recover(out, name);
  if (existsSync(place) && !existsSync(join(place, "manifest.json"))) throw new NotAPackError(place);
  const fresh = join(out, beside(name, `new-${process.pid}`));
  const old = join(out, beside(name, "old"));
  try {
    for (const { path, text } of files) {
      await mkdir(dirname(join(fresh, path)), { recursive: true });
      await writeFile(join(fresh, path), text);
    }
    if (existsSync(place)) await rename(place, old);
    await rename(fresh, place);
  } catch (error) {
    if (!existsSync(place) && existsSync(old)) await rename(old, place);
    await rm(fresh, { recursive: true, force: true });
    throw error;
  }
  await rm(old, { recursive: true, force: true });
  return place;
}

/** Put right what a killed run may have left of one folder; what another running process is writing stays. */
async function recover(out: string, name: string): Promise<void> {
  const place = join(out, name);
  const old = join(out, beside(name, "old"));
  if (existsSync(old)) {
    if (existsSync(place)) await rm(old, { recursive: true, force: true });
    else await rename(old, place);
  }
  const begun = beside(name, "new-");
  for (const entry of await readdir(out)) {
    const owner = entry.startsWith(begun) ? Number(entry.slice(begun.length)) : Number.NaN;
    if (Number.isInteger(owner) && !runs(owner)) await rm(join(out, entry), { recursive: true, force: true });
  }
}

function runs(process_: number): boolean {
  try {
    process.kill(process_, 0);
    return process_ !== process.pid;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}
