import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  visit,
} from "yaml";
import { nameOf } from "./name-of.ts";
import type { Checked, Position, Problem, ProblemCode } from "./problem.ts";
import { quoted } from "./problem.ts";

/** A file as read: its data with every scalar a string just as it was written, and where each stands. */
export type Written = {
  readonly file: string;
  readonly value: unknown;
  /** Where the value under a path of keys and indices stands, or else the nearest thing round it. */
  readonly at: (path: readonly PropertyKey[]) => Position;
  /** Where a key itself stands in the map under a path. */
  readonly atKey: (path: readonly PropertyKey[], key: string) => Position;
};

const most = { characters: 1_000_000, depth: 40 };

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
  let root: unknown;
  const fail = (code: ProblemCode, offset: number, found: string, allowed: string, hint: string): Problem => {
    return { code, position: place(offset), name: nameOf(pathAt(root, offset)), found, allowed, hint };
  };
  if (text.length > most.characters) {
    const found = `${text.length} characters`;
    return {
      ok: false,
      problems: [fail("syntax", 0, found, `at most ${most.characters}`, "is this the right file?")],
    };
  }
  let document: ReturnType<typeof parseDocument>;
  try {
    document = parseDocument(text, { schema: "failsafe", lineCounter: lines, prettyErrors: false });
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return {
      ok: false,
      problems: [fail("syntax", 0, "too many levels", `at most ${most.depth}`, "nest less deeply")],
    };
  }
  root = document.contents;
  const problems = [...document.errors, ...document.warnings].map((error) => {
    const known = syntax[error.code];
    return fail(
      "syntax",
      error.pos[0],
      known?.[0] ?? error.message,
      known?.[1] ?? "YAML",
      known?.[2] ?? syntaxHint,
    );
  });
  visit(document, (_, node, path) => {
    if (isAlias(node)) {
      problems.push(
        fail(
          "alias",
          node.range?.[0] ?? 0,
          `the alias *${node.source}`,
          "values written out",
          "write the value here",
        ),
      );
    }
    const { anchor } = (node ?? {}) as { anchor?: string };
    if (!isAlias(node) && anchor !== undefined) {
      const offset = (node as Node).range?.[0] ?? 0;
      problems.push(
        fail("alias", offset, `the anchor &${anchor}`, "values without an anchor", "remove the anchor"),
      );
    }
    if (path.length > 2 * most.depth) {
      const offset = (node as Node)?.range?.[0] ?? 0;
      problems.push(fail("syntax", offset, "too many levels", `at most ${most.depth}`, "nest less deeply"));
      return visit.BREAK;
    }
    return undefined;
  });
  if (problems.length === 0) problems.push(...oddKeys(document.contents, fail));
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, value: { file, value: plain(document.contents), ...places(document.contents, place) } };
}

const syntaxHint = "look for a missing colon, bracket, quote or indent there or just before";

/** Found, allowed and hint for the syntax errors that are met most. */
const syntax: { readonly [code: string]: readonly [string, string, string] | undefined } = {
  DUPLICATE_KEY: ["a key that stands here twice", "each key once", "remove one of the two"],
  MULTIPLE_DOCS: ["a second document after ---", "one document a file", "remove the line ---"],
  TAG_RESOLVE_FAILED: ["a tag (!...)", "plain values", "remove the tag"],
  TAB_AS_INDENT: ["a tab at the head of a line", "spaces", "indent with spaces"],
};

function* oddKeys(
  node: unknown,
  fail: (code: ProblemCode, offset: number, found: string, allowed: string, hint: string) => Problem,
): Generator<Problem> {
  if (isSeq(node)) for (const item of node.items) yield* oddKeys(item, fail);
  if (!isMap(node)) return;
  for (const { key, value } of node.items as Pair<Node, Node>[]) {
    const offset = key?.range?.[0] ?? 0;
    if (!isScalar(key) || typeof key.value !== "string") {
      yield fail(
        "type",
        offset,
        "a key that is a list or a map",
        "a word",
        "write a plain word before the colon",
      );
    } else if (["__proto__", "constructor", "prototype"].includes(key.value)) {
      yield fail("unknown-key", offset, quoted(key.value), "the keys that the form names", "remove it");
    } else yield* oddKeys(value, fail);
  }
}

/** The path of the innermost value that reaches over a place in the text. */
function pathAt(node: unknown, offset: number): PropertyKey[] {
  const over = (child: unknown) => {
    const range = (child as Node | null)?.range;
    return range !== undefined && range !== null && range[0] <= offset && offset <= range[2];
  };
  if (isSeq(node)) {
    const i = node.items.findIndex(over);
    return i < 0 ? [] : [i, ...pathAt(node.items[i], offset)];
  }
  if (!isMap(node)) return [];
  const pair = (node.items as Pair<Node, Node>[]).find(({ key, value }) => over(key) || over(value));
  return pair === undefined ? [] : [keyText(pair.key), ...pathAt(pair.value, offset)];
}

function plain(node: unknown): unknown {
  if (isScalar(node)) return typeof node.value === "string" ? node.value : "";
  if (isSeq(node)) return node.items.map(plain);
  if (!isMap(node)) return "";
  return Object.fromEntries(
    (node.items as Pair<Node, Node>[]).map(({ key, value }) => [keyText(key), plain(value)]),
  );
}

function keyText(key: unknown): string {
  return isScalar(key) ? String(key.value) : "";
}

function places(root: unknown, place: (offset: number) => Position): Pick<Written, "at" | "atKey"> {
  const walk = (path: readonly PropertyKey[]) => {
    let node = root;
    let offset = (root as Node | null)?.range?.[0] ?? 0;
    for (const step of path) {
      if (isSeq(node)) node = node.items[Number(step)];
      else if (isMap(node)) {
        const pair = (node.items as Pair<Node, Node>[]).find(({ key }) => keyText(key) === String(step));
        node = pair?.value;
        offset = pair?.key.range?.[0] ?? offset;
      } else break;
      offset = (node as Node | undefined)?.range?.[0] ?? offset;
    }
    return { node, offset };
  };
  return {
    at: (path) => place(walk(path).offset),
    atKey: (path, name) => {
      const { node, offset } = walk(path);
      const pairs = isMap(node) ? (node.items as Pair<Node, Node>[]) : [];
      return place(pairs.find(({ key }) => keyText(key) === name)?.key.range?.[0] ?? offset);
    },
  };
}
