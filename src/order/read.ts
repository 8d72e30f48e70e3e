import type { z } from "zod";
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
  const { code, allowed, hint } = (issue.code === "custom" ? (issue.params ?? {}) : {}) as Partial<Problem>;
  const missing = issue.input === undefined;
  return [
    {
      code: missing ? "missing" : ((code ?? codes[issue.code] ?? "type") as ProblemCode),
      position: written.at(path),
      name: nameOf(path),
      found: missing ? "nothing" : shown(issue.input),
      allowed: allowed ?? sentence(issue),
      hint:
        hint ??
        (missing ? `add ${String(path.at(-1) ?? "it")}` : didYouMean(String(issue.input), words(issue))),
    },
  ];
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
  return issue.code === "invalid_type";
}

function strangers(issues: readonly z.core.$ZodIssue[]): number {
  return issues.reduce(
    (sum, issue) =>
      sum + (issue.code === "unrecognized_keys" ? issue.keys.length : issue.input === undefined ? 1 : 0),
    0,
  );
}

function words(issue: z.core.$ZodIssue): string[] {
  return issue.code === "invalid_value" ? issue.values.map(String) : [];
}

function sentence(issue: z.core.$ZodIssue): string {
  return issue.code === "invalid_type" && issue.message.startsWith("Invalid")
    ? (expected[issue.expected] ?? issue.expected)
    : issue.message;
}

const expected: { readonly [type: string]: string | undefined } = {
  array: "a list",
  tuple: "a list",
  object: "a map",
};

/** The dotted name that a path stands for; a dimension goes by its own name wherever it is written. */
function nameOf(path: readonly PropertyKey[]): string {
  const own = path[0] === "set" || path[0] === "dimensions" ? path.slice(1) : path;
  return (own.length === 0 ? path : own).map(String).join(".");
}

function shown(input: unknown): string {
  if (typeof input === "string") return input === "" ? "nothing" : quoted(input);
  if (Array.isArray(input)) return `a list of ${input.length}`;
  return typeof input === "object" ? "a map" : String(input);
}
