import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseSync } from "oxc-parser";
import { describe, expect, it } from "vitest";
import { top } from "../samples.ts";

const src = join(top, "src");
const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));

/** The exported declarations of a source that have no docstring right before them. */
function undocumented(name: string, text: string): string[] {
  const { program, comments, errors } = parseSync(name, text);
  if (errors.length > 0) return [`${name} can't be parsed`];
  return program.body.flatMap((node): string[] => {
    const declares =
      node.type === "ExportNamedDeclaration" && node.declaration !== null && node.declaration !== undefined;
    if (!declares && node.type !== "ExportDefaultDeclaration") return [];
    const before = comments.filter(
      ({ type, value, end }) => type === "Block" && value.startsWith("*") && end <= node.start,
    );
    const near = before.some(({ end }) => /^\s*$/.test(text.slice(end, node.start)));
    return near ? [] : [`${name}: ${text.slice(node.start, node.start + 60)}`];
  });
}

describe("docstrings", () => {
  it.each(files)("%s documents what it exports", (name) => {
    expect(undocumented(name, readFileSync(join(src, name), "utf8"))).toEqual([]);
  });

  it("finds a planted export without one, and one whose docstring is another's", () => {
    expect(undocumented("a.ts", "export const x = 1;")).toHaveLength(1);
    expect(undocumented("a.ts", "/** One. */\nconst y = 2;\nexport type X = number;")).toHaveLength(1);
    expect(undocumented("a.ts", "// no docstring\nexport function f() {}")).toHaveLength(1);
    expect(undocumented("a.ts", "/** One. */\nexport const x = 1;")).toEqual([]);
  });
});
