import { describe, expect, it } from "vitest";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import type { Options } from "../../src/order/resolve.ts";
import type { Spec, SpecValue } from "../../src/order/spec.ts";
import { type Pack, packOf } from "../../src/pack/pack.ts";
import { memoryStore } from "../../src/step/store.ts";
import { everyCount, specOf } from "../samples.ts";

const textOf = ({ files }: Pack, path: string) => files.find((file) => file.path === path)?.text;
const prints = ({ files }: Pack) =>
  new Map(
    files
      .filter(({ path }) => path.endsWith(".dxf"))
      .map(({ path, fingerprint, text }) => [path, { fingerprint, text }]),
  );

/** The machine files that differ between two packs, and those that don't, by name. */
function changed(a: Pack, b: Pack) {
  const [before, after] = [prints(a), prints(b)];
  const names = [...before.keys()];
  const moved = names.filter((name) => before.get(name)!.fingerprint !== after.get(name)!.fingerprint);
  for (const name of names.filter((n) => !moved.includes(n)))
    expect(before.get(name)!.text).toBe(after.get(name)!.text);
  for (const name of moved) expect(before.get(name)!.text).not.toBe(after.get(name)!.text);
  return moved.map((name) => name.replace(/.*\/|\.dxf/g, "")).sort();
}

function pack(strings: number, more = "", options: Options = {}): Pack {
  return packOf(specOf("sedge", strings, more, options), memoryStore());
}

describe("a pack", () => {
  it("has outlines with pictures, report, checks and a manifest of every other file", () => {
    const five = pack(5);
    expect(five.files.map(({ path }) => path).sort()).toEqual([
      ...[
        "checks.json",
        "dimensions.json",
        "dimensions.md",
        "manifest.json",
        "outlines/bridge.dxf",
        "outlines/bridge.svg",
      ],
      ...[
        "outlines/fingerboard.dxf",
        "outlines/fingerboard.svg",
        "outlines/head-face.dxf",
        "outlines/head-face.svg",
      ],
      ...[
        "outlines/neck-plan.dxf",
        "outlines/neck-plan.svg",
        "outlines/neck-saw-plan.dxf",
        "outlines/neck-saw-plan.svg",
        "outlines/neck-saw-side.dxf",
        "outlines/neck-saw-side.svg",
        "outlines/neck-side.dxf",
        "outlines/neck-side.svg",
      ],
      ...["outlines/nut.dxf", "outlines/nut.svg"],
    ]);
    const manifest = JSON.parse(textOf(five, "manifest.json")!);
    expect(manifest.files.map((file: { path: string }) => file.path)).toEqual(
      five.files
        .map(({ path }) => path)
        .filter((path) => path !== "manifest.json")
        .sort(),
    );
    for (const { path, bytes, readBack } of manifest.files) {
      expect(bytes).toBe(Buffer.byteLength(textOf(five, path)!));
      if (path.endsWith(".dxf")) expect(readBack).toMatchObject({ status: "same", differences: [] });
    }
  });

  it("is the same in a fresh store, in one that made others before, and made twice", () => {
    const alone = everyCount.map(({ design, count }) => packOf(specOf(design, count), memoryStore()));
    const store = memoryStore();
    const together = [...everyCount]
      .reverse()
      .map(({ design, count }) => packOf(specOf(design, count), store));
    expect(together.reverse()).toEqual(alone);
    expect(everyCount.map(({ design, count }) => packOf(specOf(design, count), store))).toEqual(alone);
  });

  it("with six strings in place of five changes what must change", () => {
    const [five, six] = [pack(5), pack(5, "", { strings: "6" })];
    expect(changed(five, six)).toEqual([
      "bridge",
      "fingerboard",
      "head-face",
      "neck-plan",
      "neck-saw-plan",
      "neck-saw-side",
      "neck-side",
      "nut",
    ]);
    expect(six.report.fingerprint).not.toBe(five.report.fingerprint);
    expect(textOf(six, "outlines/nut.dxf")).toContain("F2 WIDE 1.50");
    expect(textOf(five, "outlines/nut.dxf")).not.toContain("F2 WIDE");
  });

  it.each<[string, string[]]>([
    ["nut.allowance: 1.2", ["nut"]],
    ["bridge.arch: 11", ["bridge"]],
    ["bridge.tilt: 1", ["bridge"]],
    ["fingerboard.corner: 3", ["fingerboard"]],
    ["core.slope: 4.4", ["bridge", "neck-saw-plan", "neck-saw-side", "neck-side"]],
    ["string.clearance.end.high: 3.6", ["bridge"]],
    ["string.clearance.nut.low: 1.1", ["bridge", "nut"]],
    ["tailpiece.height: 16.5", []],
    ["nut.thickness: 5.5", ["head-face", "neck-plan", "neck-saw-plan", "neck-saw-side", "neck-side"]],
    [
      "nut.gap: 4.4",
      [
        "bridge",
        "fingerboard",
        "head-face",
        "neck-plan",
        "neck-saw-plan",
        "neck-saw-side",
        "neck-side",
        "nut",
      ],
    ],
    ["head.row: 27", ["head-face", "neck-plan", "neck-saw-plan", "neck-saw-side", "neck-side"]],
    ["head.column: 14.3", ["head-face", "neck-plan", "neck-saw-plan"]],
    ["neck.thickness.heel: 21.2", ["neck-saw-side", "neck-side"]],
    ["neck.transition.end: 156", ["neck-plan", "neck-saw-plan"]],
    ["core.depth: 31", ["neck-saw-plan", "neck-saw-side", "neck-side"]],
    ["tuner.height: 6.5", []],
  ])("with %s changes the files %j and keeps the bytes of the rest", (set, files) => {
    expect(changed(pack(5), pack(5, `set:\n  ${set}\n`))).toEqual(files);
  });

  it("has a fingerprint of its own for a change of a number alone, and none for what changes nothing", () => {
    const print = (more: string, options: Options = {}) => pack(5, more, options).report.fingerprint;
    expect(print("set:\n  tailpiece.height: 16.5\n")).not.toBe(print(""));
    expect(print("", { strings: "5", hand: "right" })).toBe(print(""));
    expect(print("set:\n  nut.margin: 3.75\n")).toBe(print(""));
  });

  it("of the other hand keeps every number and changes every outline", () => {
    const [right, left] = [pack(5), pack(5, "", { hand: "left" })];
    expect(left.report.dimensions).toEqual(right.report.dimensions);
    expect(changed(right, left)).toEqual([
      "bridge",
      "fingerboard",
      "head-face",
      "neck-plan",
      "neck-saw-plan",
      "neck-saw-side",
      "neck-side",
      "nut",
    ]);
  });

  it("of some parts has just these, and their numbers", () => {
    const nut = packOf(specOf("sedge", 5), memoryStore(), ["nut"]);
    expect([...prints(nut).keys()]).toEqual(["outlines/nut.dxf"]);
    expect(new Set(nut.report.dimensions.map(({ part }) => part))).toEqual(new Set(["nut"]));
  });
});

/** A five-string sedge whose nut has walls too thin to stand. */
function thinWalled(overrule: Spec["overrule"] = []): Spec {
  const spec = specOf("sedge", 5);
  const wall: SpecValue = { ...spec.values["nut.wall"]!, value: 4.6 };
  const made: Spec = { ...spec, values: { ...spec.values, "nut.wall": wall }, overrule };
  expect(contradictions(made, instrument(made, memoryStore()))).toEqual([]);
  return made;
}

describe("a refusing check", () => {
  it("holds back the files of its set-up, and no other", () => {
    const made = packOf(thinWalled(), memoryStore());
    expect(made.held).toEqual([
      { file: "nut", check: "wall.nut", why: expect.stringContaining("raise nut.margin") },
    ]);
    expect([...prints(made).keys()]).not.toContain("outlines/nut.dxf");
    expect(textOf(made, "dimensions.md")).toContain("Held back, because a check refuses: nut.");
    expect(made.report.checks.find(({ id }) => id === "wall.nut")?.status).toBe("refuse");
  });

  it("that a person overrules lets the file go, with the reason written on it", () => {
    const position = { file: "order.yaml", line: 1, column: 1 };
    const overrule = [{ check: "wall.nut", reason: "brass nut, für Testzwecke", position }];
    const made = packOf(thinWalled(overrule), memoryStore());
    expect(made.held).toEqual([]);
    expect(textOf(made, "outlines/nut.dxf")).toContain("OVERRULED wall.nut: brass nut, fuer Testzwecke");
    expect(textOf(made, "outlines/bridge.dxf")).not.toContain("OVERRULED");
    expect(made.report.checks.find(({ id }) => id === "wall.nut")).toMatchObject({ status: "refuse" });
  });
});
