import { existsSync } from "node:fs";
import { lstat, mkdir, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join, relative, sep } from "node:path";
import { makeFolder } from "./make-folder.ts";

/** A file to publish, by its path inside the folder: its text, or its bytes. */
export type Published = { readonly path: string; readonly content: string | Uint8Array };

/** Thrown when the place of a pack holds something that no pack is: nothing is touched. */
export class NotAPackError extends Error {
  readonly place: string;
  readonly stranger: string;
  constructor(place: string, stranger: string) {
    super(`${place} ${stranger}, so it is left alone`);
    this.name = "NotAPackError";
    this.place = place;
    this.stranger = stranger;
  }
}

const beside = (name: string, what: string) => `.${name}.${what}`;

/**
 * Put a folder of files into its place, whole or not at all.
 *
 * All files are written beside the place first; then the old folder is moved aside, the new one moved in and the old one removed.
 * Killed at any moment, the place holds the old folder whole or the new one whole, or the old one lies beside it; the next
 * call for the same place puts that back and clears what was left half written. A place that holds anything but a pack throws a
 * NotAPackError before anything is touched there.
 */
export async function publish(out: string, name: string, files: readonly Published[]): Promise<string> {
  const place = join(out, name);
  await freeOrPack(out, name);
  await recover(out, name);
  const fresh = join(out, beside(name, `new-${process.pid}`));
  const old = join(out, beside(name, "old"));
  try {
    for (const { path, content } of files) {
      await mkdir(dirname(join(fresh, path)), { recursive: true });
      await writeFile(join(fresh, path), content);
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

/** Throws a NotAPackError when a pack's place holds anything that isn't one; `out` is made, and nothing in it is touched. */
export async function freeOrPack(out: string, name: string): Promise<void> {
  await makeFolder(out);
  const place = join(out, name);
  const stranger = await strangerIn(place);
  if (stranger !== undefined) throw new NotAPackError(place, stranger);
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

const manifestName = "manifest.json";

/**
 * What keeps a place from being replaced by a pack, in words that follow the place's name; nothing where there is nothing yet, or
 * where a pack lies whole or in part: a folder with a manifest that names an order, and no file but those that it lists.
 */
async function strangerIn(place: string): Promise<string | undefined> {
  const kind = await lstat(place).catch(unlessMissing);
  if (kind === undefined) return undefined;
  if (kind.isSymbolicLink()) return "is a symbolic link";
  if (!kind.isDirectory()) return "is a file";
  const listed = listedIn(await readFile(join(place, manifestName), "utf8").catch(() => ""));
  if (listed === undefined) return "is there already and holds no manifest.json of a pack";
  const entries = await readdir(place, { recursive: true, withFileTypes: true });
  const unlisted = entries
    .filter((entry) => !entry.isDirectory())
    .map((entry) => relative(place, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .filter((path) => path !== manifestName && !listed.includes(path))
    .sort();
  return unlisted.length === 0 ? undefined : `holds ${unlisted[0]}, which is not of its pack`;
}

/** The paths that a manifest lists, or nothing when the text is no pack's manifest. */
function listedIn(text: string): string[] | undefined {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (typeof data !== "object" || data === null) return undefined;
  const { order, files } = data as { order?: unknown; files?: unknown };
  if (typeof order !== "string" || !Array.isArray(files)) return undefined;
  const paths = files.map((file: unknown) => (file as { path?: unknown } | null)?.path);
  return paths.every((path) => typeof path === "string") ? paths : undefined;
}

function unlessMissing(error: NodeJS.ErrnoException): undefined {
  if (error.code === "ENOENT") return undefined;
  throw error;
}
