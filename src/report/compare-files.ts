import type { ListedFile } from "./read-manifest.ts";

/** A file of a pack that rests on something else than before; several of one name stand together, by their endings. */
export type MovedFiles = {
  /** Folder and name without ending. */
  readonly name: string;
  readonly endings: readonly string[];
  readonly kind: "changed" | "new" | "gone";
  /** The picture to look at, by its path in the pack, where there is one. */
  readonly picture: string | null;
};

/**
 * The files of two packs that differ by fingerprint, sorted by name. Files without one (reports, manifest) are not looked at: what is in
 * them is compared as numbers.
 */
export function compareFiles(before: readonly ListedFile[], after: readonly ListedFile[]): MovedFiles[] {
  const [old, now] = [before, after].map(
    (files) =>
      new Map(files.flatMap((file) => (file.fingerprint === null ? [] : [[file.path, file] as const]))),
  );
  const paths = [...new Set([...old!.keys(), ...now!.keys()])].sort();
  const moved = new Map<string, MovedFiles>();
  for (const path of paths) {
    const [a, b] = [old!.get(path), now!.get(path)];
    if (a !== undefined && b !== undefined && a.fingerprint === b.fingerprint) continue;
    const kind = a === undefined ? "new" : b === undefined ? "gone" : "changed";
    const name = path.replace(/\.[^./]+$/, "");
    const picture = `${name}.svg`;
    const key = `${name} ${kind}`;
    const endings = [...(moved.get(key)?.endings ?? []), path.slice(name.length + 1)];
    const shown = now!.has(picture) || old!.has(picture) ? picture : null;
    moved.set(key, { name, endings, kind, picture: shown });
  }
  return [...moved.values()];
}
