import { describe, expect, it } from "vitest";
import { extentsOf } from "../../src/geometry/measure.ts";
import type { Path } from "../../src/geometry/path.ts";
import { type Segment, segmentsOf } from "../../src/geometry/segment.ts";
import { boardTop } from "../../src/instrument/fingerboard/surface.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { everyCount, specOf } from "../samples.ts";

/** Blanks and heads of the worked violin. */
const worked = {
  4: { head: 96, blank: [580, 54, 60] },
  5: { head: 122, blank: [605, 60, 60] },
  6: { head: 122, blank: [605, 66, 60] },
  7: { head: 148, blank: [630, 72, 60] },
} as const;

/** The direction of travel at a segment's start and end, degrees. */
function directions(segment: Segment): [number, number] {
  const chord = Math.atan2(segment.to.y - segment.from.y, segment.to.x - segment.from.x);
  const half = segment.kind === "arc" ? segment.sweep / 2 : 0;
  return [((chord - half) * 180) / Math.PI, ((chord + half) * 180) / Math.PI];
}

/** How far an outline turns at each of its vertices, degrees. */
function kinks(path: Path): number[] {
  const all = segmentsOf(path).map(directions);
  return all.map(([start], i) => {
    const turn = start - all.at(i - 1)![1];
    return Math.abs(((turn + 540) % 360) - 180);
  });
}

describe.each(Object.entries(worked))(
  "the worked violin's neck with %s strings",
  (count, { head, blank }) => {
    const design = count === "7" ? "thrift" : "sedge";
    const { instrument } = modelOf(specOf(design, Number(count)), memoryStore());

    it("has the head and the blank of the table, and the lowest wood at -54.5", () => {
      expect(instrument.tuners.length).toBe(head);
      const { length, width, thickness } = instrument.neckBlank;
      expect([length, width, thickness]).toEqual(blank);
      expect(instrument.neckSide).toMatchObject({ kind: "ok", lowest: expect.closeTo(-54.5, 1) });
    });
  },
);

describe.each(everyCount)("the neck of $design with $count strings", ({ design, count }) => {
  const { instrument, spec } = modelOf(specOf(design, count), memoryStore());
  const of = (id: string) => spec.values[id]!.value;
  const outline = (side: "neckPlan" | "neckSide") => {
    const made = instrument[side];
    if (made.kind !== "ok") throw new Error(made.kind);
    return made;
  };

  it("has fair outlines of at most 80 lines and arcs: corners only where it has corners, kinks under 0.05 degrees elsewhere", () => {
    for (const [side, corners] of [
      ["neckPlan", 0],
      ["neckSide", of("core.drop") > 0 ? 7 : 6],
    ] as const) {
      const { path, arcs } = outline(side);
      expect(arcs).toBeLessThanOrEqual(80);
      expect(path.points).toHaveLength(arcs);
      const sharp = kinks(path).filter((kink) => kink > 0.05);
      expect(sharp, side).toHaveLength(corners);
    }
  });

  it("has its named thicknesses with the board, measured on the side's outline", () => {
    for (const where of ["nut", "heel"] as const) {
      const x = of(`neck.station.${where}`);
      const back = outline("neckSide").path.points.find(
        (point) => Math.abs(point.x - x) < 1e-9 && point.y < -1,
      );
      expect(boardTop(instrument.surface, x, 0) - back!.y).toBeCloseTo(of(`neck.thickness.${where}`), 5);
    }
  });

  it("leads every string to a post of its own without crossing another", () => {
    const { tuners } = instrument.tuners;
    expect(new Set(tuners.map(({ along, y }) => `${along} ${y}`)).size).toBe(count);
    const x = (i: number) =>
      -of("nut.thickness") - tuners[i]!.along * Math.cos((of("head.angle") * Math.PI) / 180);
    const bare = spec.tuners === "tail";
    const post = (i: number) => tuners[i]!.y - (bare ? 0 : (Math.sign(tuners[i]!.y) * of("tuner.post")) / 2);
    const at = (i: number, where: number) => {
      const nut = instrument.layout.nut[i]!;
      return nut + ((post(i) - nut) * where) / x(i);
    };
    for (let i = 0; i < count; i++) {
      for (let k = i + 1; k < count; k++) {
        const far = Math.max(x(i), x(k));
        for (let t = 0; t <= 1; t += 0.05) expect(at(i, far * t)).toBeGreaterThan(at(k, far * t));
      }
    }
  });

  it("turns every string over the nut by 6 to 15 degrees seen from the side, and by 8 at most in plan", () => {
    for (const { bend, splay } of instrument.tuners.tuners) {
      expect(bend).toBeGreaterThan(6);
      expect(bend).toBeLessThan(15);
      expect(Math.abs(splay)).toBeLessThan(8);
    }
  });

  it("holds its tuners as its kind says: in two columns, or straight behind the slots in two rows by turns", () => {
    const { kind, tuners, half, rows, length } = instrument.tuners;
    expect(length).toBeCloseTo(2 * of("head.margin") + (rows - 1) * of("head.row"), 9);
    expect(extentsOf([outline("neckPlan").path])!.minX).toBeCloseTo(
      -of("nut.thickness") - length * Math.cos((of("head.angle") * Math.PI) / 180),
      5,
    );
    for (const { along } of tuners) expect((along - of("head.margin")) % of("head.row")).toBeCloseTo(0, 9);
    if (kind === "tail") {
      expect(tuners.map(({ y }) => y)).toEqual(instrument.layout.nut.map((y) => expect.closeTo(y, 5)));
      expect(tuners.map(({ row }) => row)).toEqual(tuners.map((_, i) => i % 2));
      expect(half).toBeCloseTo(Math.max(...instrument.layout.nut.map(Math.abs)) + of("head.edge"), 5);
      for (const { splay } of tuners) expect(Math.abs(splay)).toBeLessThan(1e-4);
    } else {
      for (const { y } of tuners) expect(Math.abs(y)).toBe(of("head.column"));
      expect(rows).toBe(Math.ceil(count / 2));
      expect(half).toBe(of("head.column") + of("head.edge"));
    }
    const taper = (instrument.tunerHole.back - instrument.tunerHole.face) / of("head.thickness");
    expect(taper).toBeCloseTo(kind === "pegs" ? 1 / 30 : 0, 9);
  });
});

it("has a design of each kind of tuners, so that each is tried", () => {
  const kinds = everyCount.map(({ design, count }) => specOf(design, count).tuners);
  expect(new Set(kinds)).toEqual(new Set(["machine-heads", "pegs", "tail"]));
});
