import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { assemblySheets } from "../../src/drawing/sheet/assembly/assembly-sheets.ts";
import { textBox } from "../../src/drawing/sheet/lettering.ts";
import type { Sheet } from "../../src/drawing/sheet/sheet.ts";
import { titledSheet } from "../../src/drawing/sheet/titled-sheet.ts";
import { expectedOfMesh, readBackStlPieces, readBackThreemfPieces } from "../../src/files/read-back-solid.ts";
import { threemfRead } from "../../src/files/threemf-read.ts";
import { overlap } from "../../src/geometry/extents/overlap.ts";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { extentsOf } from "../../src/geometry/measure.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import { assembledFiles, meshedOnce } from "../../src/pack/meshed-once.ts";
import { assemblyPackFiles } from "../../src/pack/solid-pack-files.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";
import { admesh, describeWith } from "./tool.ts";

let kernel: Kernel;
let folder: string;
beforeAll(async () => {
  kernel = await loadKernel();
  folder = mkdtempSync(join(tmpdir(), "assembly-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

const known = new Map<string, ReturnType<typeof assembledNow>>();
/** An instrument's parts, put together once for all tests of it. */
function made(design: string, count: number, hand: "right" | "left") {
  const key = `${design} ${count} ${hand}`;
  const found = known.get(key) ?? assembledNow(design, count, hand);
  known.set(key, found);
  return found;
}

function assembledNow(design: string, count: number, hand: "right" | "left") {
  const store = memoryStore();
  const model = modelOf(specOf(design, count, "", { hand }), store);
  const meshOf = meshedOnce(kernel, store);
  const parts = assembledFiles(model).map((file) => ({ file, mesh: meshOf(file) }));
  return { model, parts, store };
}

const samples = [
  ["sedge", 5, "right"],
  ["mallow", 5, "left"],
  ["thrift", 7, "right"],
  ["bulrush", 4, "right"],
] as const;

/** The box round all parts, by their own measures. */
function whole(parts: ReturnType<typeof made>["parts"]) {
  const all = parts.map(({ mesh }) => meshMeasures(mesh));
  const pick = (k: "x" | "y" | "z") => ({
    least: Math.min(...all.map(({ least }) => least[k])),
    most: Math.max(...all.map(({ most }) => most[k])),
  });
  return { x: pick("x"), y: pick("y"), z: pick("z") };
}

describe.each(samples)("the assembled instrument of %s with %d strings, %s hand", (design, count, hand) => {
  it("is written as closed pieces that read back, with every part under its name", () => {
    const { parts } = made(design, count, hand);
    const [stl, threemf] = assemblyPackFiles(parts);
    expect(stl!.path).toBe("outlines/assembly.stl");
    expect(stl!.readBack).toMatchObject({ status: "same" });
    const read = threemfRead(threemf!.content as Uint8Array);
    if (read.kind !== "ok") throw new Error(read.problem);
    expect(read.pieces.map(({ name }) => name)).toEqual(parts.map(({ file: { name } }) => name));
    const volume = parts.reduce((sum, { mesh }) => sum + meshMeasures(mesh).volume, 0);
    expect(Math.abs((stl!.readBack as { volume: number }).volume - volume)).toBeLessThan(1e-6 * volume);
  });

  it("is drawn on sheets with its true extents written, no text over another, all of it inside the frame", () => {
    const { model, parts, store } = made(design, count, hand);
    const box = whole(parts);
    const drawn = parts.map(({ file: { name, key }, mesh }) => ({ name, key, mesh }));
    const sheets = assemblySheets(model, drawn).map((file) => ({ file, sheet: file.of(model, store).value }));
    expect(sheets.map(({ file: { name } }) => name)).toEqual(["assembly", "assembly-apart"]);
    for (const { file, sheet } of sheets) {
      const titled = titledSheet(sheet, {
        ...{ order: "T-1", part: file.part, fingerprint: "0123456789ab", hand, seenFrom: "front" },
        overruled: [],
      });
      soundSheet(titled);
    }
    const said = sheets[0]!.sheet.texts.map(({ text }) => text);
    for (const { least, most } of Object.values(box)) expect(said).toContain((most - least).toFixed(2));
    const { value, tolerance } = model.spec.values["string.length"]!;
    expect(said).toContain(`STRING LENGTH ${value.toFixed(2)} ±${tolerance.toFixed(2)}`);
    expect(said.some((text) => text.startsWith("FROM THE PLAYER'S SIDE"))).toBe(true);
    expect(
      said.some((text) => text.includes(hand === "right" ? "FROM THE BASS SIDE" : "FROM THE TREBLE SIDE")),
    ).toBe(true);
    const names = sheets[1]!.sheet.texts.map(({ text }) => text);
    // What is wholly behind others is named under the view, and nothing twice.
    const rest = names.find((text) => text.startsWith("NOT SEEN FROM HERE: "))?.split(": ")[1] ?? "";
    const [hidden, words] = [
      rest.split("; "),
      parts.map(({ file }) => file.name.toUpperCase().replace("-", ", ")),
    ];
    for (const word of words)
      expect(
        [...names, ...hidden].filter((one) => one === word),
        word,
      ).toHaveLength(1);
  });
});

function soundSheet({ texts, lines, frame }: Sheet): void {
  const boxes = texts.map(textBox);
  for (const [i, one] of boxes.entries()) {
    expect(one.minX > frame.minX && one.maxX < frame.maxX, texts[i]!.text).toBe(true);
    for (const [k, other] of boxes.entries())
      if (k > i) expect(overlap(one, other), `${texts[i]!.text} over ${texts[k]!.text}`).toBe(false);
  }
  const { minX, maxX, minY, maxY } = extentsOf(lines.map(({ path }) => path))!;
  expect(minX >= frame.minX && maxX <= frame.maxX && minY >= frame.minY && maxY <= frame.maxY).toBe(true);
}

describe("reading an assembly back", () => {
  it("finds a part that moved, one that is missing, and one under another's name", () => {
    const { parts } = made("sedge", 5, "right");
    const [stl, threemf] = assemblyPackFiles(parts);
    const pieces = parts.map(({ file: { name }, mesh }) => ({ name, expected: expectedOfMesh(mesh) }));
    const [bytes, zip] = [stl!.content as Uint8Array, threemf!.content as Uint8Array];
    expect(readBackStlPieces(bytes, pieces).status).toBe("same");
    const off = pieces.map((piece, i) =>
      i === 3
        ? {
            ...piece,
            expected: {
              ...piece.expected,
              most: { ...piece.expected.most, x: piece.expected.most.x + 0.01 },
            },
          }
        : piece,
    );
    expect(readBackStlPieces(bytes, off).differences.join()).toContain(`${pieces[3]!.name}: extents`);
    expect(readBackThreemfPieces(zip, off).differences.join()).toContain(`${pieces[3]!.name}: extents`);
    expect(readBackStlPieces(bytes, pieces.slice(1)).status).toBe("differs");
    expect(readBackThreemfPieces(zip, pieces.slice(1)).differences).toEqual([
      `${parts.length} pieces, not ${parts.length - 1}`,
    ]);
    const swapped = [{ ...pieces[0]!, name: "wing" }, ...pieces.slice(1)];
    expect(readBackThreemfPieces(zip, swapped).differences).toEqual(["the name neck, not wing"]);
  });
});

describeWith(admesh, "admesh takes the assembled instrument as closed parts", () => {
  it.each(samples)("of %s with %d strings, %s hand", (design, count, hand) => {
    const { parts } = made(design, count, hand);
    const [stl] = assemblyPackFiles(parts);
    const volume = parts.reduce((sum, { mesh }) => sum + meshMeasures(mesh).volume, 0);
    const file = join(folder, "assembly.stl");
    writeFileSync(file, stl!.content);
    const text = execFileSync("admesh", [file], { encoding: "utf8" });
    const number = (name: string) => Number(new RegExp(`${name}\\s*:\\s+(-?[\\d.]+)`).exec(text)![1]);
    for (const flaw of [
      "Degenerate facets",
      "Edges fixed",
      "Facets removed",
      "Backwards edges",
      "Facets reversed",
    ])
      expect(number(flaw), flaw).toBe(0);
    expect(number("Number of parts")).toBe(parts.length);
    expect(Math.abs(number("Volume") / volume - 1)).toBeLessThan(1e-4);
  });
});
