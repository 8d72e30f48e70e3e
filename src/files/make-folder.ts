import { mkdir, stat } from "node:fs/promises";
import { dirname } from "node:path";

/**
 * Make a folder and those above it that are missing; one that is there is left as it is. Fails as `mkdir` does, naming the nearest
 * place that no folder can be made at. (Node's own recursive mkdir never ends in a place such as /proc.)
 */
export async function makeFolder(path: string): Promise<void> {
  if (await isFolder(path)) return;
  if (dirname(path) !== path) await makeFolder(dirname(path));
  try {
    await mkdir(path);
  } catch (error) {
    if (!(await isFolder(path))) throw error;
  }
}

function isFolder(path: string): Promise<boolean> {
  return stat(path).then(
    (kind) => kind.isDirectory(),
    () => false,
  );
}
