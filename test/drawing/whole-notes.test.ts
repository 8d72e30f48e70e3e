import { describe, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { stackedNotes } from "../../src/drawing/flat/stacked-notes.ts";
import { wholeNotes } from "../../src/drawing/flat/whole-notes.ts";
import { wrapped } from "../../src/drawing/sheet/wrapped.ts";
import { fullSize } from "../../src/drawing/tiles/full-size.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { frettedSpec } from "../samples.ts";

const spec = frettedSpec(7);
const model = modelOf(spec, memoryStore());
const store = memoryStore();
const title = { order: "SY-0422", fingerprint: "0123456789ab", hand: "right", seenFrom: "back" } as const;

/** A note of so many words, each of seven letters, ended by a full stop. */
const sentence = (words: number, mark: string) =>
  `${Array.from({ length: words }, (_, i) => `${mark}${String(i).padStart(6, "0")}`).join(" ")}.`;

describe("notes that are broken into lines", () => {
  it("are put together again as they were, however long, and short ones beside them stay alone", () => {
    const notes = [
      sentence(3, "A"),
      sentence(30, "B"),
      sentence(2, "C"),
      sentence(55, "D"),
      sentence(19, "E"),
    ];
    const lines = notes.flatMap((text) => wrapped(text, 150));
    expect(lines.length).toBeGreaterThan(notes.length + 3);
    const found = wholeNotes(stackedNotes(lines, 10, 20), notes);
    expect(found.map(({ text }) => text)).toEqual(notes);
    expect(found[0]).toMatchObject({ x: 10, y: 20 + (lines.length - 1) * 4.25 });
  });

  it("are not put together where they are no lines of one sentence in their order", () => {
    const [text, other] = [sentence(30, "B"), sentence(19, "E")];
    const [one, two] = stackedNotes(wrapped(text, 150), 0, 0);
    expect(wholeNotes([one!, two!], [text])).toEqual([{ ...one!, text }]);
    for (const notes of [[two!, one!], [one!], [one!, { ...two!, text: "WARNING: KEEP CLEAR" }]])
      expect(wholeNotes(notes, [text, other])).toEqual(notes);
    expect(wholeNotes([one!, two!], [])).toEqual([one, two]);
  });
});

describe("the full-size sheets of an inside template", () => {
  const file = flatsOf(spec).find(({ name }) => name === "body-back-inside")!;
  const flat = file.of(model, store).value;
  const remarks = file.remarks!(model, store);
  const own = { ...title, part: "body", name: file.name, overruled: [] };
  const { pages } = fullSize({ flat, remarks, title: own, paper: spec.paper, fromNumbers: undefined });
  const isRemarks = (page: (typeof pages)[number]) => page.groups[0]!.name === "remarks";
  const words = (page: (typeof pages)[number]) =>
    page.groups.flatMap(({ marks }) => marks.texts.map(({ text }) => text));

  it("have each sentence whole among the remarks, and no end of one as a label on a sheet", () => {
    const said = pages.filter(isRemarks).flatMap(words);
    expect(remarks.length).toBeGreaterThan(20);
    // Each begins a line of its own and goes on to its end in the next ones, or on the next page.
    for (const text of remarks) {
      const first = said.findIndex((line) => text.startsWith(line));
      expect(said.slice(first, first + 6).join(" "), text).toContain(text);
    }
    expect(said.join(" ")).toMatch(/BATTERY 264\.00, 49\.50 BELOW IT PACKINGS AS HIGH/);
    const labels = pages.filter((page) => !isRemarks(page)).flatMap(words);
    expect(labels.filter((text) => /^(BATTERY 264|OR IN WASTE|WORK AND PRESS|\(DEFAULT)/.test(text))).toEqual(
      [],
    );
    // The saboteur: what the drawing has as lines of their own.
    expect(flat.notes.filter(({ text }) => /^(BATTERY 264|OR IN WASTE)/.test(text))).toHaveLength(2);
  });

  it("begin with what is drawn, and take no row of sheets for words", () => {
    const first = pages[0]!.groups.filter(({ name }) => name.startsWith("layer."));
    expect(first.length).toBeGreaterThan(0);
    expect(pages.filter((page) => !isRemarks(page)).length).toBeLessThan(27);
  });
});
