import { NotAPackError } from "../files/publish.ts";
import { shownPath } from "../files/shown-path.ts";
import { commandLine, InputError, type Problem } from "../order/problem.ts";
import { ReadBackError } from "../pack/pack-file.ts";

/** What stopped a command: something that a person gave it, or the machine or the program, with a stable code and a sentence. */
export type Trouble =
  | { readonly kind: "input"; readonly problems: readonly Problem[] }
  | { readonly kind: "failed"; readonly code: string; readonly message: string };

/**
 * What stopped a command, in plain words. A place that can't hold what is to be written, because something else is there or on the
 * way, is a person's input: `writesTo` names the argument that gave it. Permissions, disks, what other programs do meanwhile, a
 * file that reads back differently and faults of the program are not.
 */
export function troubleOf(error: unknown, writesTo: string): Trouble {
  if (error instanceof InputError) return { kind: "input", problems: error.problems };
  if (error instanceof NotAPackError)
    return wrongPlace(writesTo, `${shownPath(error.place)}, which ${error.stranger}`);
  if (error instanceof ReadBackError) return failed("read-back", `${error.message}; ${ourFault}`);
  if (!(error instanceof Error)) return failed("program", `${String(error)}; ${ourFault}`);
  const { code, path, syscall, dest } = error as NodeJS.ErrnoException & { readonly dest?: string };
  if (code === undefined || syscall === undefined)
    return failed("program", `${error.name}: ${error.message}; ${ourFault}`);
  const shown = dest ?? path;
  const place = shown === undefined ? undefined : shownPath(shown);
  const inTheWay = writesTo === "" ? undefined : unfit[`${code} ${syscall}`];
  if (inTheWay !== undefined) return wrongPlace(writesTo, `${place ?? "a place"}, ${inTheWay}`);
  return failed(code, (sentences[code] ?? unknown(code))(place ?? "a file"));
}

const ourFault = "this is a fault of the program: please report it, with the order";

/** Places that can't be written to for what they are, by the system's code and what was tried. */
const unfit: Readonly<Record<string, string>> = {
  "EEXIST mkdir": "which is no folder",
  "ENOTDIR mkdir": "which leads through a file",
  "ENOTDIR open": "which leads through a file",
  "ENOENT mkdir": "where no folder can be made",
  "ENAMETOOLONG mkdir": "a longer name than the disk takes",
  "ENAMETOOLONG open": "a longer name than the disk takes",
  "ELOOP mkdir": "a symbolic link that leads to itself",
  "EISDIR rename": "which is a folder",
};

function wrongPlace(name: string, found: string): Trouble {
  const [allowed, hint] =
    name === "out"
      ? ["a place for packs that nothing else is in", "move it away, or give another --out"]
      : ["a place that a file can be written to", "look at the path, or choose another place"];
  const position = { file: commandLine, line: 1, column: 1 };
  return { kind: "input", problems: [{ code: "unreadable", position, name, found, allowed, hint }] };
}

function failed(code: string, message: string): Trouble {
  return { kind: "failed", code, message };
}

const denied = (place: string) =>
  `${place} is not open to this user; look at its permissions and those of its folder, or choose another place`;
const full = (place: string) =>
  `no room on the disk for ${place}; make room and run this again: what was there before is whole`;
const crowded = (place: string) => `${place} was written by another program at the same time; run this again`;
const open = (place: string) =>
  `${place} can't be opened, since too many files are open; close other programs and run this again`;

/** What the system's codes mean, as a sentence about a place. */
const sentences: Readonly<Record<string, (place: string) => string>> = {
  ...{ EACCES: denied, EPERM: denied, ENOSPC: full, EDQUOT: full, EMFILE: open, ENFILE: open },
  ...{ ENOTEMPTY: crowded, EEXIST: crowded },
  EROFS: (place) => `${place} lies on a disk that can only be read; choose another place`,
  ENOENT: (place) =>
    `${place} went away while it was needed; look at what else works there and run this again`,
  EIO: (place) => `the disk failed at ${place}; try another disk, and look after this one`,
  EBUSY: (place) => `${place} is held by another program; close that and run this again`,
};

function unknown(code: string): (place: string) => string {
  return (place) =>
    `the system would not go on at ${place} (it says ${code}); look at the place, or choose another`;
}
