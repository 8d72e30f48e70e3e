import { rename, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { makeFolder } from "./make-folder.ts";

/** Write a file whole or not at all: beside its place first, then moved over whatever is there. */
export async function replaceFile(file: string, text: string): Promise<void> {
  await makeFolder(dirname(resolve(file)));
  const fresh = join(dirname(file), `.${basename(file)}.new-${process.pid}`);
  try {
    await writeFile(fresh, text);
    await rename(fresh, file);
  } catch (error) {
    await rm(fresh, { force: true });
    throw error;
  }
}
