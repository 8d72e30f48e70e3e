import { describe, expect, it, vi } from "vitest";
import { consoleFor } from "../../src/commands/console.ts";
import { endedBy } from "../../src/commands/run.ts";
import { troubleOf } from "../../src/commands/trouble.ts";
import { NotAPackError } from "../../src/files/publish.ts";
import { InputError, type Problem } from "../../src/order/problem.ts";
import { ReadBackError } from "../../src/pack/pack-file.ts";

/** An error as Node's file system gives it. */
function system(code: string, syscall: string, path?: string, dest?: string): Error {
  const more = {
    code,
    syscall,
    ...(path === undefined ? {} : { path }),
    ...(dest === undefined ? {} : { dest }),
  };
  return Object.assign(new Error(`${code}: raw words, ${syscall} '${path}'`), more);
}

describe("trouble", () => {
  it.each([
    [system("EEXIST", "mkdir", "/yard/packs"), "/yard/packs, which is no folder"],
    [system("ENOTDIR", "mkdir", "/yard/packs"), "/yard/packs, which leads through a file"],
    [system("ENOENT", "mkdir", "/yard/packs"), "/yard/packs, where no folder can be made"],
    [system("ENAMETOOLONG", "mkdir", "/yard/packs"), "/yard/packs, a longer name than the disk takes"],
    [system("ELOOP", "mkdir", "/yard/packs"), "/yard/packs, a symbolic link that leads to itself"],
    [system("EISDIR", "rename", "/yard/.new", "/yard/packs"), "/yard/packs, which is a folder"],
    [new NotAPackError("/yard/packs/P", "is a symbolic link"), "/yard/packs/P, which is a symbolic link"],
  ])("with the place that a person named is that person's input: %s", (error, found) => {
    const trouble = troubleOf(error, "out");
    expect(trouble).toMatchObject({ kind: "input", problems: [{ name: "out", found }] });
    expect(JSON.stringify(trouble)).not.toContain("raw words");
    expect(JSON.stringify(trouble)).toContain("--out");
    expect(JSON.stringify(troubleOf(error, "file"))).not.toContain("--out");
  });

  it.each([
    [
      system("EACCES", "mkdir", "/yard/packs"),
      "EACCES",
      /^\/yard\/packs is not open to this user; .*permissions/,
    ],
    [system("EPERM", "open", "/yard/packs"), "EPERM", /^\/yard\/packs is not open to this user; /],
    [
      system("EROFS", "mkdir", "/yard/packs"),
      "EROFS",
      /^\/yard\/packs lies on a disk that can only be read; /,
    ],
    [system("ENOSPC", "write"), "ENOSPC", /^no room on the disk for a file; make room/],
    [system("EDQUOT", "open", "/yard/a"), "EDQUOT", /^no room on the disk for \/yard\/a; make room/],
    [system("EMFILE", "open", "/yard/a"), "EMFILE", /^\/yard\/a can't be opened, .*; close other programs/],
    [system("ENOENT", "open", "/yard/a"), "ENOENT", /^\/yard\/a went away/],
    [
      system("ENOTEMPTY", "rename", "/yard/.new", "/yard/P"),
      "ENOTEMPTY",
      /^\/yard\/P was written by another/,
    ],
    [system("EIO", "read", "/yard/a"), "EIO", /^the disk failed at \/yard\/a; /],
    [system("EBUSY", "rename", "/a", "/b"), "EBUSY", /^\/b is held by another program; /],
    [
      system("EXDEV", "rename", "/a", "/b"),
      "EXDEV",
      /^the system would not go on at \/b \(it says EXDEV\); /,
    ],
    [new ReadBackError("a.dxf", ["x"]), "read-back", /^a\.dxf reads back differently.*fault of the program/],
    [new TypeError("x is undefined"), "program", /^TypeError: x is undefined; .*fault of the program/],
    ["a text", "program", /^a text; /],
  ])("of the machine or the program is no input: %s", (error, code, said) => {
    const trouble = troubleOf(error, "out");
    expect(trouble).toMatchObject({ kind: "failed", code });
    if (trouble.kind === "failed") expect(trouble.message).toMatch(said);
    expect(JSON.stringify(trouble)).not.toContain("raw words");
  });

  it("where a command writes nothing is never its input", () => {
    expect(troubleOf(system("ENOTDIR", "open", "/yard/a"), "")).toMatchObject({
      kind: "failed",
      code: "ENOTDIR",
    });
  });

  it("that problems of an order make is those problems", () => {
    const problems: Problem[] = [
      {
        ...{ code: "type", position: { file: "o.yaml", line: 2, column: 3 }, name: "strings" },
        ...{ found: "x", allowed: "y", hint: "" },
      },
    ];
    expect(troubleOf(new InputError(problems), "out")).toEqual({ kind: "input", problems });
  });
});

describe("a command that trouble ends", () => {
  it.each([
    [
      system("EACCES", "mkdir", "/yard/packs"),
      3,
      { failed: { code: "EACCES", message: expect.stringMatching(/^\/yard/) } },
    ],
    [system("EEXIST", "mkdir", "/yard/packs"), 2, { problems: [expect.objectContaining({ name: "out" })] }],
  ])("tells it on standard error, and with --json as data: %s", (error, status, data) => {
    const told = vi.spyOn(process.stderr, "write").mockReturnValue(true);
    const printed: string[] = [];
    const around = { stderrTty: false, stdoutTty: false, env: {}, now: () => 0, toStderr: () => {} };
    const ended = [true, false].map((json) =>
      endedBy(
        error,
        consoleFor({ json, quiet: false }, { ...around, toStdout: (text) => printed.push(text) }),
        "out",
      ),
    );
    const lines = told.mock.calls.map(([text]) => String(text));
    told.mockRestore();
    expect(ended).toEqual([status, status]);
    expect(printed.map((text) => JSON.parse(text))).toEqual([data]);
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(status === 2 ? /^problem command line: out: / : /^failed: \/yard\/packs /);
    expect(lines[1]).toBe(lines[0]);
  });
});
