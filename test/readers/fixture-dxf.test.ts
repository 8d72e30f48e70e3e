import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { fixtureFlats } from "../../src/drawing/flat/fixture-flats.ts";
import type { Flat } from "../../src/drawing/flat/flat.ts";
import { titled } from "../../src/drawing/flat/titled.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import { placeAlong } from "../../src/geometry/path-measures/place-along.ts";
import { pointOn } from "../../src/geometry/path-measures/segment-places.ts";
import { type Segment, segmentsOf } from "../../src/geometry/segment.ts";
import { memoryStore } from "../../src/step/store.ts";
import { cutRuns } from "../../src/workshop/guided/cut-runs.ts";
import type { Fixture } from "../../src/workshop/guided/fixture.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Read = {
  readonly errors: number;
  readonly closed: { readonly [layer: string]: readonly boolean[] };
  /** How far the guided edge is off |d| from PART at worst, on which share of its length that is, and which share of that lies in PART. */
  readonly buffered: number;
  readonly beside: number;
  readonly inside: number;
  readonly onOuter: number;
  readonly deviation: number;
  readonly tried: number;
  readonly turned: number;
  readonly swept: number;
  readonly outside: number;
  readonly bores: { readonly [layer: string]: number };
  readonly texts: readonly string[];
};

const wings = ["wing-bass-router", "wing-treble-router"];
const named = (files: readonly string[], tools: string) =>
  `fixtures:\n${files.map((file) => `  ${file}: ${tools}\n`).join("")}`;
const pinned = "{ cutter: straight-19, guide: pin-12 }";
const bushed = "{ machine: hand-router, cutter: straight-8, guide: bush-16 }";
const bodies = ["body-bass-router", "body-treble-router"];

/** What of a part's outline its fixture leaves alone, or leaves to the hand: chords of each stretch. */
function leftAlone({ outline, run, edge, joined }: Fixture): number[][][] {
  const places = edge?.kind === "ok" ? edge.places : [];
  const cut = cutRuns(
    outline,
    outline.points.map(() => "cut" as const),
  )[0]!;
  const along = run.path.points;
  const other = segmentsOf(cut.path)
    .filter(
      ({ from, to }) =>
        !along.some((at, i) => at === from && along[i + 1]?.x === to.x && along[i + 1]?.y === to.y),
    )
    .map((segment) => onSegment(segment));
  const byHand = places.map(({ from, to }) =>
    Array.from({ length: 401 }, (_, i) =>
      placeAlong(run.path, from - 0.02 + ((to - from + 0.04) * i) / 400),
    ).flatMap((place) => (place.kind === "ok" ? [[place.point.x, place.point.y]] : [])),
  );
  return [...other, ...byHand, ...joined.map(({ points }) => points.map(({ x, y }) => [x, y]))];
}

/** Points of a line or an arc, so close that their chords stray by less than a thousandth of a millimetre. */
function onSegment(segment: Segment): number[][] {
  const count = segment.kind === "line" ? 1 : 100;
  return Array.from({ length: count + 1 }, (_, i) => pointOn(segment, i / count)).map(({ x, y }) => [x, y]);
}

describeWith(ezdxf, "every fixture's machine file, opened by ezdxf and cut once more by shapely", () => {
  const orders = [
    ...([
      ["sedge", 4, "", "left"],
      ["sedge", 5, "", "right"],
      ["sedge", 6, named(wings, pinned), "right"],
    ] as const),
    ...([
      ["mallow", 4, named(["neck-shaper"], "{ cutter: block-100, guide: collar-80 }"), "right"],
      ["mallow", 5, named(wings, bushed), "left"],
    ] as const),
    ...([
      ["thrift", 7, "", "right"],
      ["thrift", 5, named(bodies, pinned), "left"],
      ["thrift", 4, named([...bodies, "fingerboard-router"], bushed), "right"],
    ] as const),
    ...([
      ["bulrush", 4, named([...wings, "fingerboard-router"], pinned), "left"],
      ["bulrush", 5, "", "right"],
    ] as const),
  ];
  const store = memoryStore();
  const made = orders.flatMap(([design, count, more, hand]) => {
    const model = modelOf(specOf(design, count, more, { hand }), store);
    const files = fixtureFlats.filter(({ applies }) => applies!(model.spec));
    return files.map((file, i) => {
      const fixture = model.fixtures()[i]!;
      const { setUp, edge, holding } = fixture;
      if (edge?.kind !== "ok") throw new Error(`${file.name}: ${edge?.kind}`);
      expect(fixture.file).toBe(file.name);
      return {
        file,
        hand,
        flat: file.of(model, store).value,
        setUp: setUp!,
        places: edge.places,
        holes: holding!.holes,
        alone: leftAlone(fixture),
      };
    });
  });
  let folder = "";
  let read: readonly Read[] = [];

  const written = (flat: Flat, part: string, hand: "right" | "left", name: string) => {
    const own = { order: "T-1", part, fingerprint: "0", hand, seenFrom: "front", overruled: [] };
    const path = join(folder, name);
    writeFileSync(path, dxfText(titled(flat, own)));
    return path;
  };
  const shifted = ({ shapes, notes }: Flat): Flat => ({
    notes,
    shapes: shapes.map((shape) => ({
      ...shape,
      path: ["GUIDED-EDGE", "OUTER-EDGE"].includes(shape.layer)
        ? { ...shape.path, points: shape.path.points.map((point) => ({ ...point, y: point.y + 0.02 })) }
        : shape.path,
    })),
  });

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "fixture-"));
    const jobs = made.map(({ file, hand, flat, alone, setUp: { cutter, guide, offset } }, i) => [
      written(flat, file.part, hand, `${i}.dxf`),
      ...[guide.diameter, cutter.diameter, offset, alone],
    ]);
    // The saboteurs: a template that lies 0.02 to one side, and one that is cut with a guide 0.2 larger than it says.
    const { file, hand, flat, setUp, alone } = made[2]!;
    jobs.push([written(shifted(flat), file.part, hand, "moved.dxf"), ...jobs[2]!.slice(1)]);
    jobs.push([jobs[2]![0]!, setUp.guide.diameter + 0.2, setUp.cutter.diameter, setUp.offset, alone]);
    const listed = join(folder, "jobs.json");
    writeFileSync(listed, JSON.stringify(jobs));
    read = python(join(import.meta.dirname, "read_fixture.py"), listed) as Read[];
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const sound = () => read.slice(0, made.length);

  it("has one template and one part, closed, and one guided edge, open, that lies on the template", () => {
    for (const { errors, closed, onOuter } of sound()) {
      expect(errors).toBe(0);
      expect(closed["OUTER-EDGE"]).toEqual([true]);
      expect(closed.PART).toEqual([true]);
      expect(closed["GUIDED-EDGE"]).toEqual([false]);
      expect(onOuter).toBeLessThan(0.002);
    }
  });

  it("has its guided edge |d| from PART within 0.01 mm, on the right side of it, and longer by run-in and run-out", () => {
    for (const [i, { buffered, beside, inside }] of sound().entries()) {
      const { offset } = made[i]!.setUp;
      expect(buffered).toBeLessThan(0.01);
      expect(beside).toBeLessThan(0.85);
      expect(beside).toBeGreaterThan(0.5);
      if (offset > 0) expect(inside).toBe(0);
      if (offset < 0) expect(inside).toBe(1);
    }
    expect(new Set(made.map(({ setUp }) => Math.sign(setUp.offset)))).toEqual(new Set([-1, 0, 1]));
  });

  it("leaves the part within 0.01 mm when its guide is rolled and its cutter swept", () => {
    for (const [i, { deviation, tried }] of sound().entries()) {
      for (const { hand } of made[i]!.places) expect(hand).toBe(true);
      expect(made[i]!.places.length > 0).toBe(made[i]!.file.part === "neck");
      expect(tried).toBeGreaterThan(260);
      expect(deviation).toBeLessThan(0.01);
    }
  });

  it("is used twice only where the part turned over about its length is the same", () => {
    const twice = sound().filter((_, i) => ["neck", "fingerboard"].includes(made[i]!.file.part));
    expect(twice).toHaveLength(2 * orders.length);
    for (const { turned } of twice) expect(turned).toBeLessThan(0.002);
  });

  it("has nothing in the cutter's circle, all of it on the base, and two index pins that are unlike", () => {
    for (const [i, { swept, outside, bores }] of sound().entries()) {
      expect(swept).toBeGreaterThan(6 - 1e-3);
      expect(outside).toBeLessThan(1e-6);
      const drills = made[i]!.holes.map(({ diameter }) => `BORE-${diameter.toFixed(2).replace(".", "_")}`);
      expect(bores).toEqual(
        Object.fromEntries(drills.map((one) => [one, drills.filter((other) => other === one).length])),
      );
      const pins = made[i]!.holes.filter(({ what }) => what.startsWith("index pin"));
      expect(new Set(pins.map(({ diameter }) => diameter)).size).toBe(2);
      expect(bores["BORE-8_50"] ?? 0).toBe(made[i]!.setUp.machine.moves === "work" ? 2 : 0);
    }
  });

  it("says what to scribe on it, and the cautions of its machine", () => {
    for (const [i, { texts }] of sound().entries()) {
      const { cutter, guide, speed, machine } = made[i]!.setUp;
      const said = texts.join("\n");
      expect(said).toContain(`CUTTER ${cutter.id.toUpperCase()}`);
      expect(said).toContain(`GUIDE ${guide.id.toUpperCase()}`);
      expect(said).toContain(`(MEASURED ${guide.measured})`);
      expect(said).toContain(`${speed.rpm} RPM`);
      expect(said).toMatch(/TEST STRIP IN SCRAP FIRST/);
      expect(said).toMatch(/TRIES THIS DRAWING, NOT THE WOOD/);
      expect(said).toMatch(/NEVER CLIMB/);
      expect(said).toMatch(
        machine.moves === "work" ? /HANDHOLDS ONLY, 305/ : /BOTH HANDS ON THE ROUTER'S OWN GRIPS/,
      );
      expect(said).toMatch(/A COMPETENT PERSON COME FIRST/);
    }
  });

  it("finds a template shifted by 0.02, and a guide 0.2 larger than written", () => {
    const [moved, larger] = read.slice(made.length);
    expect(moved!.deviation).toBeGreaterThan(0.018);
    expect(larger!.deviation).toBeGreaterThan(0.095);
    expect(larger!.deviation).toBeLessThan(0.105);
  });
});
