import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import type { Options } from "../../src/order/resolve.ts";
import type { Spec, SpecValue } from "../../src/order/spec.ts";
import type { KeptFiles } from "../../src/pack/kept-files.ts";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { type Means, type Pack, packOf, partNames } from "../../src/pack/pack.ts";
import { reportFor } from "../../src/pack/report-for.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { memoryStore } from "../../src/step/store.ts";
import { everyCount, specOf } from "../samples.ts";

const contentOf = ({ files }: Pack, path: string) => files.find((file) => file.path === path)?.content;
const textOf = (pack: Pack, path: string) => {
  const content = contentOf(pack, path);
  return typeof content === "string" ? content : undefined;
};
const hashOf = (content: string | Uint8Array) => createHash("sha256").update(content).digest("hex");
const prints = ({ files }: Pack) =>
  new Map(
    files
      .filter(({ path }) => /\.(dxf|stl)$/.test(path))
      .map(({ path, fingerprint, content }) => [path, { fingerprint, hash: hashOf(content) }]),
  );
const kernel = kernelOnce();
const packed = (
  spec: Spec,
  store = memoryStore(),
  solids = solidsHere(kernel),
  only: Means["only"] = "all",
) => packOf(spec, { store, solids, only });

/** The machine files that differ between two packs by name, those that are gone or new too; the bytes of the others are held alike. */
function changed(a: Pack, b: Pack) {
  const [before, after] = [prints(a), prints(b)];
  const names = [...before.keys()].filter((name) => after.has(name));
  const gone = [...before.keys()].filter((name) => !after.has(name));
  const fresh = [...after.keys()].filter((name) => !before.has(name));
  const moved = names.filter((name) => before.get(name)!.fingerprint !== after.get(name)!.fingerprint);
  for (const name of names.filter((n) => !moved.includes(n)))
    expect(before.get(name)!.hash).toBe(after.get(name)!.hash);
  // A caul follows from where its wing stands, and may come out the same.
  for (const name of moved.filter((n) => !n.startsWith("printed/caul")))
    expect(before.get(name)!.hash, name).not.toBe(after.get(name)!.hash);
  return [...moved, ...gone, ...fresh].map((name) => name.replace(/.*\//, "")).sort();
}

/** What these packs share is worked out and meshed once: that this changes nothing has a test of its own. */
const shared = memoryStore();
const meshed = solidsHere(kernel);
const kept: KeptFiles = new Map();

function pack(more = "", options: Options = {}, only: Means["only"] = "all"): Promise<Pack> {
  return packOf(specOf("sedge", 5, more, options), { store: shared, solids: meshed, kept, only });
}

let first: Promise<Pack> | undefined;
/** The pack that the others are changes of. */
const usual = () => (first ??= pack());

/** All that a pack is, its files by their hashes. */
function hashes({ report, held, files }: Pack) {
  return { report, held, files: files.map(({ content, ...file }) => ({ ...file, hash: hashOf(content) })) };
}

/** One edit a line of the golden file that says which machine files it changes. */
const edits = [
  "nut.allowance: 1.2",
  "bridge.tilt: 1",
  "core.slope: 4.4",
  "string.clearance.end.high: 3.6",
  "tailpiece.height: 16.5",
  "nut.gap: 4.4",
  "head.row: 27",
  "neck.thickness.heel: 21.2",
  "core.depth: 31",
  "wing.treble.cant: 12.5",
  "recess.corner: 3.4",
  "tuner.height: 6.5",
];

describe("a pack", () => {
  it("has outlines with pictures, report, checks and a manifest of every other file", async () => {
    const five = await usual();
    await expect(
      `${five.files
        .map(({ path }) => path)
        .sort()
        .join("\n")}\n`,
    ).toMatchFileSnapshot("files.golden.txt");
    const manifest = JSON.parse(textOf(five, "manifest.json")!);
    expect(manifest.files.map((file: { path: string }) => file.path)).toEqual(
      five.files
        .map(({ path }) => path)
        .filter((path) => path !== "manifest.json")
        .sort(),
    );
    for (const { path, bytes, readBack } of manifest.files) {
      expect(bytes).toBe(Buffer.byteLength(contentOf(five, path)!));
      if (/\.(dxf|stl|3mf)$/.test(path)) expect(readBack).toMatchObject({ status: "same", differences: [] });
    }
  });

  it("is the same in a fresh store, in one that made others before, and made twice", async () => {
    const some = everyCount.filter(
      ({ design, count }) => (count === 5 && design === "sedge") || (design === "thrift" && count === 7),
    );
    const alone = [];
    for (const { design, count } of some) alone.push(hashes(await packed(specOf(design, count))));
    // What is kept of the first round stands for the second.
    const means = { store: memoryStore(), solids: solidsHere(kernel), kept: new Map() };
    for (const list of [[...some].reverse(), some]) {
      const made = [];
      for (const { design, count } of list) made.push(hashes(await packOf(specOf(design, count), means)));
      expect(list === some ? made : made.reverse()).toEqual(alone);
    }
  });

  it("with six strings in place of five changes what must change", async () => {
    const [five, six] = [await usual(), await pack("", { strings: "6" })];
    expect(changed(five, six)).toEqual(
      expect.arrayContaining(["bridge.dxf", "fingerboard.stl", "neck.stl", "nut.dxf", "tailpiece.dxf"]),
    );
    expect(six.report.fingerprint).not.toBe(five.report.fingerprint);
    expect(textOf(six, "outlines/nut.dxf")).toContain("F2 WIDE 1.50");
    expect(textOf(five, "outlines/nut.dxf")).not.toContain("F2 WIDE");
  });

  it("changes, after each edit, the files that rest on it and keeps the bytes of the rest", async () => {
    const lines: string[] = [];
    // Parts alone: putting them together again after each edit would tell nothing more.
    const parts = await pack("", {}, partNames);
    for (const edit of edits)
      lines.push(`${edit}: ${changed(parts, await pack(`set:\n  ${edit}\n`, {}, partNames)).join(" ")}`);
    const left = await pack("", { hand: "left" });
    expect(left.report.dimensions).toEqual((await usual()).report.dimensions);
    lines.push(`the other hand: ${changed(await usual(), left).join(" ")}`);
    await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("changes.golden.txt");
  });

  it("has a fingerprint of its own for a change of a number alone, and none for what changes nothing", async () => {
    const print = async (more: string, options: Options = {}) =>
      (await pack(more, options, ["nut", "tailpiece"])).report.fingerprint;
    expect(await print("set:\n  tailpiece.height: 16.5\n")).not.toBe(await print(""));
    expect(await print("", { strings: "5", hand: "right" })).toBe(await print(""));
    expect(await print("set:\n  nut.margin: 3.75\n")).toBe(await print(""));
  });

  it("has the fingerprint that a check of its order tells without making it", async () => {
    expect(reportFor(specOf("sedge", 5), shared).fingerprint).toBe((await usual()).report.fingerprint);
  });

  it("of some parts has just these, and their numbers", async () => {
    const nut = await pack("", {}, ["nut"]);
    expect([...prints(nut).keys()]).toEqual([
      "outlines/nut.dxf",
      "outlines/nut.stl",
      "printed/notches-nut.stl",
    ]);
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
  it("holds back the files of its set-up, and no other", async () => {
    const made = await packed(thinWalled(), shared, meshed);
    expect(made.held).toEqual([
      { file: "nut", check: "wall.nut", why: expect.stringContaining("raise nut.margin") },
    ]);
    expect([...prints(made).keys()]).not.toContain("outlines/nut.dxf");
    expect(textOf(made, "dimensions.md")).toContain("Held back, because a check refuses: nut.");
    expect(made.report.checks.find(({ id }) => id === "wall.nut")?.status).toBe("refuse");
  });

  it("that a person overrules lets the file go, with the reason written on it", async () => {
    const position = { file: "order.yaml", line: 1, column: 1 };
    const overrule = [{ check: "wall.nut", reason: "brass nut, für Testzwecke", position }];
    const made = await packed(thinWalled(overrule), shared, meshed);
    expect(made.held).toEqual([]);
    expect(textOf(made, "outlines/nut.dxf")).toContain("OVERRULED wall.nut: brass nut, fuer Testzwecke");
    expect(textOf(made, "outlines/bridge.dxf")).not.toContain("OVERRULED");
    expect(made.report.checks.find(({ id }) => id === "wall.nut")).toMatchObject({ status: "refuse" });
  });
});
