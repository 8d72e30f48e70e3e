import { describe, expect, it } from "vitest";
import type { Flat, Note } from "../../src/drawing/flat/flat.ts";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { titled } from "../../src/drawing/flat/titled.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { everyCount, specOf } from "../samples.ts";

type Box = readonly [x1: number, y1: number, x2: number, y2: number];
type Place = readonly [x: number, y: number];

/** The box of a note in the monospaced type of pictures: 0.62 of its size wide, which is its height by 0.7. */
function boxOf({ text, x, y, height, align }: Note): Box {
  const long = (text.length * 0.62 * height) / 0.7;
  const start = align === "left" ? 0 : align === "right" ? -long : -long / 2;
  return [x + start, y, x + start + long, y + height];
}

/** Places along all lines and arcs of a drawing, no farther apart than a tenth of a letter's height. */
function placesOf({ shapes }: Flat): Place[] {
  return shapes.flatMap(({ path: { points, closed } }) =>
    points.slice(0, closed ? points.length : -1).flatMap((from, i): Place[] => {
      const to = points[(i + 1) % points.length]!;
      const half = 2 * Math.atan(from.bulge);
      const chord = Math.hypot(to.x - from.x, to.y - from.y);
      const long = half === 0 ? chord : (chord * half) / Math.sin(half);
      const count = Math.max(1, Math.ceil(long / 0.25));
      const lean = Math.atan2(to.y - from.y, to.x - from.x);
      return Array.from({ length: count + 1 }, (_, k) => {
        const share = k / count;
        const reach = half === 0 ? chord * share : (chord * Math.sin(half * share)) / Math.sin(half);
        const toward = lean - half + half * share;
        return [from.x + reach * Math.cos(toward), from.y + reach * Math.sin(toward)];
      });
    }),
  );
}

/** The words that something runs through, and pairs that overlap. */
function crossed(flat: Flat): string[] {
  const boxes = flat.notes.map((note) => ({ text: note.text, box: boxOf(note) }));
  const places = placesOf(flat);
  const through = boxes.filter(({ box: [x1, y1, x2, y2] }) =>
    places.some(([x, y]) => x > x1 && x < x2 && y > y1 && y < y2),
  );
  const over = boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter(({ box }) => a.box[0] < box[2] && box[0] < a.box[2] && a.box[1] < box[3] && box[1] < a.box[3])
      .map((b) => `${a.text} / ${b.text}`),
  );
  return [...through.map(({ text }) => text), ...over];
}

const store = memoryStore();
const drawn = (design: string, count: number) => {
  const spec = specOf(design, count, "", { hand: count % 2 === 0 ? "left" : "right" });
  const model = modelOf(spec, store);
  return flatsOf(spec)
    .filter(({ folder }) => folder === "fixtures")
    .map((file) => {
      const own = { order: "SY-0417", part: file.part, fingerprint: "0123456789ab", seenFrom: "front" };
      return {
        name: file.name,
        flat: titled(file.of(model, store).value, { ...own, hand: spec.hand, overruled: [] }),
      };
    });
};

describe("words on fixtures and inside templates", () => {
  it.each(everyCount)(
    "of $design with $count strings have no line through them, nor one another",
    ({ design, count }) => {
      const all = drawn(design, count);
      expect(all.length).toBeGreaterThan(1);
      for (const { name, flat } of all) {
        expect(flat.notes.length).toBeGreaterThan(20);
        expect(crossed(flat), name).toEqual([]);
        for (const { height } of flat.notes) expect(height).toBeGreaterThanOrEqual(2.5);
      }
    },
  );

  it("are found where one is put on a line, or on another", () => {
    const { flat } = drawn("sedge", 5).find(({ name }) => name === "wing-bass-router")!;
    const { x, y } = flat.shapes.find(({ layer }) => layer === "GUIDED-EDGE")!.path.points[3]!;
    const [first, ...rest] = flat.notes;
    expect(crossed({ ...flat, notes: [{ ...first!, x: x - 2, y: y - 1 }, ...rest] })).toContain(first!.text);
    const [a, b] = flat.notes;
    const both = { ...flat, notes: [a!, { ...b!, x: a!.x, y: a!.y, align: a!.align }, ...rest.slice(1)] };
    expect(crossed(both)).toContain(`${a!.text} / ${b!.text}`);
  });
});
