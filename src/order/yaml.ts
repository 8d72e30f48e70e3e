import {
  type Document,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
} from "yaml";
import { nameOf } from "./name-of.ts";
import type { Checked, Position } from "./problem.ts";
import { keyText, pathAt, places } from "./yaml-places.ts";
import { type Fail, tooDeep, yamlProblems } from "./yaml-problems.ts";

/** A file as read: its data with every scalar a string just as it was written, and where each stands. */
export type Written = {
  readonly file: string;
  readonly value: unknown;
  /** Where the value under a path of keys and indices stands, or else the nearest thing round it. */
  readonly at: (path: readonly PropertyKey[]) => Position;
  /** Where a key itself stands in the map under a path. */
  readonly atKey: (path: readonly PropertyKey[], key: string) => Position;
};

/** No file that a person writes for this program is longer. */
const mostCharacters = 1_000_000;

/**
 * Read YAML that a person wrote.
 *
 * Scalars stay strings as written (`0417` stays 0417, 1e400 stays 1e400): what they mean is for whoever knows what is
 * asked. Anchors, aliases, tags and keys that are no plain words are refused, with their place: none is needed in these files,
 * and each can be used to do harm. Every problem of syntax is returned, not only the first.
 */
export function readYaml(text: string, file: string): Checked<Written> {
  const lines = new LineCounter();
  const place = (offset: number): Position => {
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  let document: Document.Parsed | undefined;
  const fail: Fail = (code, offset, found, allowed, hint) => {
    const name = nameOf(pathAt(document?.contents, offset));
    return { code, position: place(offset), name, found, allowed, hint };
  };
  if (text.length > mostCharacters) {
    const found = `${text.length} characters`;
    const problem = fail("syntax", 0, found, `at most ${mostCharacters}`, "is this the right file?");
    return { ok: false, problems: [problem] };
  }
  try {
    document = parseDocument(text, { schema: "failsafe", lineCounter: lines, prettyErrors: false });
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ok: false, problems: [tooDeep(fail, 0)] };
  }
  const problems = yamlProblems(document, fail);
  if (problems.length > 0) return { ok: false, problems };
  const { contents } = document;
  return { ok: true, value: { file, value: plain(contents), ...places(contents, place) } };
}

function plain(node: unknown): unknown {
  if (isScalar(node)) return typeof node.value === "string" ? node.value : "";
  if (isSeq(node)) return node.items.map(plain);
  if (!isMap(node)) return "";
  return Object.fromEntries(
    (node.items as Pair<Node, Node>[]).map(({ key, value }) => [keyText(key), plain(value)]),
  );
}
