import type { z } from "zod";
import { nameOf } from "./name-of.ts";
import { didYouMean } from "./nearest.ts";
import { type Checked, type Problem, type ProblemCode, quoted } from "./problem.ts";
import { readYaml, type Written } from "./yaml.ts";

/** A file read in the form that was asked for, and where each of its values stands. */
export type ReadFile<T> = { readonly data: T; readonly written: Written };

/** Read a file's text in the form of a schema; every problem comes with its position, what is allowed and a hint. */
export function readAs<Schema extends z.ZodType>(
  schema: Schema,
  text: string,
  file: string,
): Checked<ReadFile<z.output<Schema>>> {
  const yaml = readYaml(text, file);
  if (!yaml.ok) return yaml;
  const result = schema.safeParse(yaml.value.value, { reportInput: true });
  if (result.success) return { ok: true, value: { data: result.data, written: yaml.value } };
  const problems = result.error.issues.flatMap((issue) => problemsOf(issue, yaml.value, []));
  // What is missing comes last: it is often there under a mistyped name.
  return {
    ok: false,
    problems: problems.toSorted((a, b) => Number(a.code === "missing") - Number(b.code === "missing")),
  };
}

function problemsOf(issue: z.core.$ZodIssue, written: Written, before: readonly PropertyKey[]): Problem[] {
  const path = [...before, ...issue.path];
  if (issue.code === "unrecognized_keys")
    return issue.keys.map((key) => unknownKey(issue.message, path, key, written));
  if (issue.code === "invalid_union") {
    const branch = likeliest(issue.errors, issue.input);
    if (branch !== undefined) return branch.flatMap((inner) => problemsOf(inner, written, path));
  }
  const own = (issue.code === "custom" ? (issue.params ?? {}) : {}) as Partial<Problem>;
  const missing = issue.input === undefined;
  const input = discriminated(issue);
  const allowed = own.allowed ?? sentence(issue);
  return [
    {
      code: missing ? "missing" : (own.code ?? codes[issue.code] ?? "type"),
      position: written.at(path),
      name: nameOf(path),
      found: missing ? "nothing" : shown(input),
      allowed,
      hint:
        own.hint ??
        (missing ? `add ${nameOf(path)}` : didYouMean(String(input), listed(allowed), `write ${allowed}`)),
    },
  ];
}

/** What was written, or, where one key decides the form of a map, what that key said. */
function discriminated(issue: z.core.$ZodIssue): unknown {
  const key = issue.code === "invalid_union" ? issue.path.at(-1) : undefined;
  const { input } = issue;
  if (key === undefined || typeof input !== "object" || input === null || !Object.hasOwn(input, key))
    return input;
  return (input as { [key: PropertyKey]: unknown })[key];
}

/** The words of an answer that lists some. */
function listed(allowed: string): string[] {
  return allowed.includes(", ") ? allowed.split(", ") : [];
}

const codes: { readonly [code: string]: ProblemCode | undefined } = { too_small: "count", too_big: "count" };

function unknownKey(known: string, path: readonly PropertyKey[], key: string, written: Written): Problem {
  return {
    code: "unknown-key",
    position: written.atKey(path, key),
    name: nameOf([...path, key]),
    found: `the key ${quoted(key)}`,
    allowed: known,
    hint: didYouMean(key, known.split(", "), "remove it"),
  };
}

/** The branch of a union that what was written was meant for: the one that fails somewhere inside, not at its form. */
function likeliest(branches: readonly z.core.$ZodIssue[][], input: unknown): z.core.$ZodIssue[] | undefined {
  const inside = branches.filter((issues) => !issues.some(isOfAnotherForm));
  if (inside.length <= 1 || typeof input !== "object" || input === null) return inside[0];
  return inside.toSorted((a, b) => strangers(a) - strangers(b))[0];
}

function isOfAnotherForm(issue: z.core.$ZodIssue): boolean {
  if (issue.path.length > 0) return false;
  if (issue.code === "invalid_union") return issue.errors.every((branch) => branch.some(isOfAnotherForm));
  const ofWords = issue.code === "invalid_value" || issue.code === "invalid_format";
  return issue.code === "invalid_type" || (ofWords && typeof issue.input === "object");
}

function strangers(issues: readonly z.core.$ZodIssue[]): number {
  return issues.reduce(
    (sum, issue) =>
      sum + (issue.code === "unrecognized_keys" ? issue.keys.length : issue.input === undefined ? 1 : 0),
    0,
  );
}

/** What is allowed, in our words: a schema without its own says what kind of thing is wanted. */
function sentence(issue: z.core.$ZodIssue): string {
  if (!/^(Invalid|Too|Unrecognized|Expected)/.test(issue.message)) return issue.message;
  return issue.code === "invalid_type"
    ? (expected[issue.expected] ?? "another kind of value")
    : "another form";
}

const expected: { readonly [type: string]: string | undefined } = {
  ...{ array: "a list", tuple: "a list", object: "a map of named values", record: "a map of named values" },
  ...{ string: "a word", number: "a number" },
};

function shown(input: unknown): string {
  if (typeof input === "string") return input === "" ? "nothing" : quoted(input);
  if (Array.isArray(input)) return `a list of ${input.length}`;
  return typeof input === "object" ? "a map" : String(input);
}
