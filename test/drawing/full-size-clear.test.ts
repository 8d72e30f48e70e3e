import { describe, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { fullSize } from "../../src/drawing/tiles/full-size.ts";
import type { MarkGroup, Page } from "../../src/drawing/tiles/tile-page.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { frettedSpec, someCounts, specOf } from "../samples.ts";
import { pageFaults } from "./page-clear.ts";

const store = memoryStore();
const title = { order: "SY-0417", fingerprint: "0123456789ab", hand: "right" as const, seenFrom: "front" };

/** The sheets of every drawing of a spec, without pages of remarks, which hold nothing else. */
function sheetsOf(spec: ReturnType<typeof specOf>) {
  const model = modelOf(spec, store);
  return flatsOf(spec).flatMap((file) => {
    const { flat, name } = { flat: file.of(model, store).value, name: file.name };
    const own = { ...title, part: file.part, name, overruled: [] };
    const { pages, plan } = fullSize({
      flat,
      remarks: file.remarks?.(model, store),
      title: own,
      paper: spec.paper,
      fromNumbers: file.fromNumbers?.(spec),
    });
    return pages
      .filter(({ groups }) => groups[0]!.name !== "remarks")
      .map((page, i) => ({ name: `${name} ${i + 1}`, page, inside: plan!.inside }));
  });
}

describe("full-size sheets", () => {
  it.each(someCounts)(
    "of $design with $count strings have no word over a word or a line, nor a square over what is drawn",
    ({ design, count }) => {
      const sheets = sheetsOf(specOf(design, count, "", { hand: count === 5 ? "right" : "left" }));
      expect(sheets.length).toBeGreaterThan(20);
      for (const { name, page, inside } of sheets) expect(pageFaults(page, inside), name).toEqual([]);
      // Most squares have all their sides; the others stand by their corners.
      const whole = sheets.filter(({ page }) => squareOf(page).marks.lines.length === 1);
      expect(whole.length / sheets.length).toBeGreaterThan(0.3);
    },
    120_000,
  );

  it("of a fretted board have none either, on a larger paper", () => {
    const spec = frettedSpec(5, "paper: A3\n");
    const sheets = sheetsOf(spec).filter(({ name }) => /^(fingerboard|body)/.test(name));
    expect(sheets.length).toBeGreaterThan(3);
    for (const { name, page, inside } of sheets) expect(pageFaults(page, inside), name).toEqual([]);
  });

  it("are found wrong where a word, a line or the square is put where it shouldn't be", () => {
    const { page, inside } = sheetsOf(specOf("sedge", 5)).find(({ name }) => name.startsWith("wing-bass "))!;
    expect(pageFaults(page, inside)).toEqual([]);
    const told = (change: (group: MarkGroup) => MarkGroup | undefined) =>
      pageFaults({ ...page, groups: page.groups.flatMap((group) => change(group) ?? []) }, inside).join("; ");
    const moved = (group: MarkGroup, x: number, y: number) => ({
      ...group,
      shift: { x: group.shift.x + x, y: group.shift.y + y },
    });
    const layer = page.groups.find(({ name }) => name.startsWith("layer."))!;
    const at = layer.marks.lines[0]!.path.points[0]!;
    const onLine = { text: "HERE", x: at.x - 2, y: at.y - 1, height: 2.5, turn: 0, align: "left" } as const;
    expect(
      told((group) => (group === layer ? { ...group, marks: { ...group.marks, texts: [onLine] } } : group)),
    ).toContain("through HERE");
    const square = squareOf(page);
    const all = square.marks.lines.flatMap(({ path }) => path.points);
    const [x, y] = [at.x + layer.shift.x - all[0]!.x, at.y + layer.shift.y - all[0]!.y];
    expect(told((group) => (group === square ? moved(group, x, y) : group))).toContain(
      "the square over what is drawn",
    );
    expect(told((group) => (group === square ? undefined : group))).toContain("no square");
    const words = square.marks.texts[0]!;
    const twice = { ...square, marks: { ...square.marks, texts: [words, { ...words, text: "AGAIN" }] } };
    expect(told((group) => (group === square ? twice : group))).toContain("over AGAIN");
    const small = { ...square, marks: { ...square.marks, texts: [{ ...words, height: 2 }] } };
    expect(told((group) => (group === square ? small : group))).toContain("small");
    expect(told((group) => (group === square ? moved(group, -500, 0) : group))).toContain("outside");
  });
});

function squareOf({ groups }: Page): MarkGroup {
  const found = groups.find(({ name }) => name === "square");
  if (found === undefined) throw new Error("no square");
  return found;
}
