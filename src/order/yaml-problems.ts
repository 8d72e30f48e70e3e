import { type Document, isAlias, isMap, isScalar, isSeq, type Node, type Pair, visit } from "yaml";
import { type Problem, type ProblemCode, quoted } from "./problem.ts";

/** Makes a problem of a file at an offset of its text. */
export type Fail = (
  code: ProblemCode,
  offset: number,
  found: string,
  allowed: string,
  hint: string,
) => Problem;

/** How many levels a file may nest; no file of ours needs a quarter of it. */
const mostLevels = 40;

const syntaxHint = "look for a missing colon, bracket, quote or indent there or just before";

/** Found, allowed and hint for the syntax errors that are met most. */
const syntax: { readonly [code: string]: readonly [string, string, string] | undefined } = {
  DUPLICATE_KEY: ["a key that stands here twice", "each key once", "remove one of the two"],
  MULTIPLE_DOCS: ["a second document after ---", "one document a file", "remove the line ---"],
  TAG_RESOLVE_FAILED: ["a tag (!...)", "plain values", "remove the tag"],
  TAB_AS_INDENT: ["a tab at the head of a line", "spaces", "indent with spaces"],
};

/** How many faults of syntax are told of one file: what comes after them mostly follows from them. */
const mostTold = 50;

/** What is wrong with a document before anybody asks what it means: its depth, its syntax, or else what it has that no file of ours needs. */
export function yamlProblems(document: Document.Parsed, fail: Fail): Problem[] {
  // First of all, since each unclosed bracket of a deep one is a fault of its own, as deep to look up.
  const deep = tooDeepAt(document);
  if (deep !== undefined) return [tooDeep(fail, deep)];
  const problems = [...document.errors, ...document.warnings]
    .slice(0, mostTold)
    .map(({ code, message, pos }) => {
      const [found, allowed, hint] = syntax[code] ?? [message, "YAML", syntaxHint];
      return fail("syntax", pos[0], found, allowed, hint);
    });
  visit(document, (_, node) => {
    const offset = (node as Node | null)?.range?.[0] ?? 0;
    const { anchor } = (node ?? {}) as { anchor?: string };
    if (isAlias(node)) {
      problems.push(
        fail("alias", offset, `the alias *${node.source}`, "values written out", "write the value here"),
      );
    } else if (anchor !== undefined) {
      problems.push(
        fail("alias", offset, `the anchor &${anchor}`, "values without an anchor", "remove the anchor"),
      );
    }
  });
  return problems.length > 0 ? problems : [...oddKeys(document.contents, fail)];
}

/** Where a document first nests too deeply. */
function tooDeepAt(document: Document.Parsed): number | undefined {
  let at: number | undefined;
  visit(document, (_, node, path) => {
    if (path.length <= 2 * mostLevels) return undefined;
    at = (node as Node | null)?.range?.[0] ?? 0;
    return visit.BREAK;
  });
  return at;
}

/** A file that nests too deeply to be one of ours. */
export function tooDeep(fail: Fail, offset: number): Problem {
  return fail("syntax", offset, "too many levels", `at most ${mostLevels}`, "nest less deeply");
}

function* oddKeys(node: unknown, fail: Fail): Generator<Problem> {
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
