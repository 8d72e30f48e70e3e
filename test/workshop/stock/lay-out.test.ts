import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BoardLaid, laidOut, type PieceLaid } from "../../../src/workshop/stock/lay-out.ts";

const piece = (part: string, length: number, width: number) => ({ part, length, width });
const board = { length: 2400, width: 200, least: 305 };

/** Whether two pieces lie so near that no saw of 5 passes between them. */
function tooNear(a: PieceLaid, b: PieceLaid): boolean {
  const apart = (from: number, long: number, other: number, otherLong: number) =>
    Math.max(other - from - long, from - other - otherLong);
  const gap = Math.max(apart(a.x, a.length, b.x, b.length), apart(a.y, a.width, b.y, b.width));
  return gap < 5 - 1e-6;
}

/** Whether straight cuts that go right through part all pieces: across, along, across; nothing left after at most three. */
function partsByCuts(pieces: readonly PieceLaid[], ways: readonly ("x" | "y")[]): boolean {
  if (pieces.length <= 1) return true;
  const [way, ...rest] = ways;
  if (way === undefined) return false;
  const long = way === "x" ? ("length" as const) : ("width" as const);
  const groups: PieceLaid[][] = [];
  let reach = Number.NEGATIVE_INFINITY;
  for (const one of pieces.toSorted((a, b) => a[way] - b[way])) {
    if (one[way] > reach) groups.push([]);
    groups.at(-1)!.push(one);
    reach = Math.max(reach, one[way] + one[long]);
  }
  return groups.every((group) => partsByCuts(group, rest));
}

function faultsOf(boards: readonly BoardLaid[], { length, width }: typeof board): string[] {
  return boards.flatMap(({ pieces, used, sections }) => [
    ...pieces.flatMap((one, i) => pieces.slice(i + 1).flatMap((two) => (tooNear(one, two) ? ["near"] : []))),
    ...pieces.flatMap((one) =>
      one.x < 0 || one.y < 0 || one.x + one.length > used + 1e-6 || one.y + one.width > width + 1e-6
        ? ["out"]
        : [],
    ),
    ...(used > length + 1e-6 ? ["long"] : []),
    ...(sections.at(-1)!.to === used ? [] : ["used"]),
    ...(partsByCuts(pieces, ["x", "y", "x"]) ? [] : ["cuts"]),
  ]);
}

describe("pieces laid on boards", () => {
  it("lie side by side, end to end in a strip, and on another board where one is full", () => {
    const laid = laidOut([piece("b", 500, 90), piece("a", 600, 90), piece("c", 80, 90)], board);
    expect(laid).toHaveLength(1);
    expect(laid[0]!.pieces.map(({ part, x, y }) => [part, x, y])).toEqual([
      ["a", 0, 0],
      ["b", 0, 95],
      ["c", 505, 95],
    ]);
    expect(laid[0]!.used).toBe(600);
    expect(laidOut([piece("a", 1300, 150), piece("b", 1300, 150)], board)).toHaveLength(2);
  });

  it("leave no section too short to be held, but at the end of a board", () => {
    expect(laidOut([piece("a", 50, 30)], board)[0]!.sections).toEqual([{ from: 0, to: 305 }]);
    expect(laidOut([piece("a", 50, 30)], { ...board, length: 200 })[0]!.used).toBe(200);
  });

  it("throw where a piece is larger than the board", () => {
    expect(() => laidOut([piece("a", 2401, 30)], board)).toThrow(RangeError);
    expect(() => laidOut([piece("a", 30, 201)], board)).toThrow(RangeError);
  });

  it("never come nearer than a saw needs, stay on the board and are parted by cuts right through; random pieces", () => {
    const seen = { all: 0, boards: 0, strips: 0, sections: 0 };
    const pieces = fc.array(
      fc.record({
        part: fc.constantFrom("a", "b", "c", "d"),
        length: fc.oneof(fc.integer({ min: 20, max: 300 }), fc.integer({ min: 300, max: 2400 })),
        width: fc.integer({ min: 3, max: 200 }),
      }),
      { minLength: 1, maxLength: 14 },
    );
    fc.assert(
      fc.property(pieces, (wanted) => {
        const laid = laidOut(wanted, board);
        seen.all += 1;
        if (laid.length > 1) seen.boards += 1;
        if (laid.some(({ sections }) => sections.length > 1)) seen.sections += 1;
        const shares = (one: PieceLaid, two: PieceLaid) =>
          one !== two && one.y === two.y && two.x > one.x + one.length;
        const inStrip = ({ pieces: own, sections }: BoardLaid) =>
          sections.some(({ from, to }) => {
            const here = own.filter(({ x }) => x >= from && x < to);
            return here.some((one) => here.some((two) => shares(one, two)));
          });
        if (laid.some(inStrip)) seen.strips += 1;
        expect(laid.flatMap(({ pieces: own }) => own)).toHaveLength(wanted.length);
        const areas = (list: readonly { readonly length: number; readonly width: number }[]) =>
          list.map(({ length, width }) => `${length} ${width}`).sort();
        expect(areas(laid.flatMap(({ pieces: own }) => own))).toEqual(areas(wanted));
        expect(faultsOf(laid, board)).toEqual([]);
      }),
      { seed: 11, numRuns: 400 },
    );
    for (const hard of ["boards", "strips", "sections"] as const)
      expect(seen[hard] / seen.all).toBeGreaterThan(0.1);
  });

  it.each<[string, (laid: BoardLaid) => BoardLaid, string]>([
    [
      "a piece moved 1 toward its neighbour",
      (laid) => ({
        ...laid,
        pieces: laid.pieces.map((one, i) => (i === 1 ? { ...one, y: one.y - 1 } : one)),
      }),
      "near",
    ],
    [
      "a piece past the board's edge",
      (laid) => ({ ...laid, pieces: [{ ...laid.pieces[0]!, y: 120 }] }),
      "out",
    ],
    ["a board longer than it is", (laid) => ({ ...laid, used: 2500 }), "long"],
    [
      "four pieces round a fifth, which no cut right through parts",
      (laid) => ({
        ...laid,
        used: 600,
        pieces: [
          { ...piece("a", 200, 60), x: 0, y: 0 },
          { ...piece("b", 60, 120), x: 205, y: 0 },
          { ...piece("c", 60, 135), x: 0, y: 65 },
          { ...piece("d", 200, 60), x: 65, y: 125 },
          { ...piece("e", 120, 50), x: 65, y: 65 },
        ],
      }),
      "cuts",
    ],
  ])("are told by the test's own look: %s", (_, spoil, fault) => {
    const [good] = laidOut([piece("a", 600, 90), piece("b", 600, 90)], board);
    expect(faultsOf([good!], board)).toEqual([]);
    expect(faultsOf([spoil(good!)], board)).toContain(fault);
  });
});
