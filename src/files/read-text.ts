import { readFileSync, statSync } from "node:fs";
import type { Checked } from "../order/problem.ts";

/** No order or report that a person could have meant is larger. */
const mostBytes = 4_000_000;

/** A file's text in UTF-8, or why it can't be had. */
export function readText(file: string, shown: string): Checked<string> {
  const problem = (found: string, hint: string): Checked<string> => ({
    ok: false,
    problems: [
      {
        ...{ code: "unreadable", position: { file: shown, line: 1, column: 1 }, name: "the file", found },
        ...{ allowed: "a file in UTF-8 that can be read", hint },
      },
    ],
  });
  try {
    const kind = statSync(file);
    if (kind.isDirectory()) return problem("a folder", "name the file in it");
    if (!kind.isFile()) return problem("a device or a pipe", "name a file");
    if (kind.size > mostBytes)
      return problem(`${kind.size} bytes, more than ${mostBytes}`, "is this the right file?");
    return { ok: true, value: new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(file)) };
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "ENOENT")
      return problem("no such file", "look at the path, or make one with: patternloft new FILE");
    if (code === "EACCES") return problem("a file that may not be read", "look at its permissions");
    if (code === "ERR_ENCODING_INVALID_ENCODED_DATA")
      return problem("bytes that are no UTF-8", "save it as UTF-8");
    return problem(`a file that can't be read (${code ?? "unknown"})`, "look at the path");
  }
}
