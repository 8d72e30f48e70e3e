import { describe, expect, it } from "vitest";
import type { Path } from "../../src/geometry/path.ts";
import { polygon } from "../../src/geometry/polygon.ts";
import { rectangle } from "../../src/geometry/rectangle.ts";
import type { Fixture } from "../../src/workshop/guided/fixture.ts";
import { found, treble } from "./hazard-parts.ts";
import { edgeIn } from "./spoilt-fixture.ts";

const withEdge = (fixture: Fixture, points: Path["points"]): Partial<Fixture> => ({
  edge: { ...edgeIn(fixture), edge: { closed: false, points } },
});
/** The points of an edge as the cut runs along it, and back again into the edge's own order. */
const asCut = (fixture: Fixture, edit: (points: Path["points"]) => Path["points"]) => {
  const { points } = edgeIn(fixture).edge;
  const back = fixture.feed!.way === "back";
  const flip = (list: Path["points"]) => (back ? list.toReversed() : list);
  return withEdge(fixture, flip(edit(flip(points))));
};

describe("where a cut begins and ends", () => {
  it("is refused at a corner: a run-in cut off, and one that turns", () => {
    expect(found("start.corner")).toMatchObject({ status: "pass", limit: treble.setUp!.cutter.diameter / 2 });
    expect(found("start.corner").found).toBeGreaterThan(49);
    expect(found("start.corner", (one) => asCut(one, (points) => points.slice(1)))).toMatchObject({
      ...{
        status: "refuse",
        stake: "injury",
        why: expect.stringMatching(/begins at a corner.*starting pin/),
      },
    });
    const aside = (one: Fixture) =>
      asCut(one, ([first, ...rest]) => [{ ...first!, x: first!.x + 30 }, ...rest]);
    expect(found("start.corner", aside)).toMatchObject({ status: "refuse", found: 0 });
    // The other end is no beginning.
    expect(found("start.corner", (one) => asCut(one, (points) => points.slice(0, -1))).status).toBe("pass");
  });

  it("may be at a starting pin instead, if that stands where it should", () => {
    const pinAt = (far: number) => (one: Fixture) => {
      const { points } = one.run.path;
      const start = one.feed!.way === "along" ? points[0]! : points.at(-1)!;
      const hole = { at: { x: start.x + far, y: start.y }, diameter: 12, what: "starting pin" };
      return {
        ...asCut(one, (own) => own.slice(1)),
        holding: { ...one.holding!, holes: [...one.holding!.holes, hole] },
      };
    };
    expect(found("start.corner", pinAt(75))).toMatchObject({ status: "pass", found: expect.any(Number) });
    expect(found("start.corner", pinAt(20)).status).toBe("refuse");
  });

  it("is pointed out where it ends across end grain or against it, unless that is waste", () => {
    const run = (points: readonly (readonly [number, number])[]) => () => ({
      run: {
        path: { closed: false, points: points.map(([x, y]) => ({ x, y, bulge: 0 })) },
        uses: ["cut" as const],
      },
      feed: { ...treble.feed!, way: "along" as const },
    });
    // Wood on the left: along x, out leads down.
    const end = (x: number, y: number) =>
      found(
        "exit.unsupported",
        run([
          [0, 0],
          [100, 0],
          [100 + x, y],
        ]),
      );
    expect(end(50, 0)).toMatchObject({ status: "pass", found: 0 });
    expect(end(50, 1)).toMatchObject({ status: "pass" });
    expect(end(0, 50)).toMatchObject({ status: "attend", stake: "spoilage", found: 90, limit: 60 });
    expect(end(50, -20)).toMatchObject({
      status: "attend",
      why: expect.stringMatching(/against.*leave 6 mm/),
    });
    expect(end(50, 20)).toMatchObject({ status: "pass" });
    const square = run([
      [0, 0],
      [100, 0],
      [100, 50],
    ]);
    // Wood beyond one end of two: the last for a cut along its run.
    const backed = (first: number, last: number) =>
      found("exit.unsupported", () => ({ ...square(), waste: [first, last] })).status;
    expect(backed(0, 12)).toBe("pass");
    expect(backed(12, 0)).toBe("attend");
    expect(backed(12, 12)).toBe("pass");
    expect(backed(0, 0)).toBe("attend");
    // Half of an end whose other half is cut in another set-up.
    const halves = (y: number) => ({
      ...run([
        [0, 0],
        [100, 0],
        [100, 50],
      ])(),
      outline: polygon([
        { x: 0, y: 0 },
        { x: 100, y: 0 },
        { x: 100, y: 50 },
        { x: 100, y },
        { x: 0, y: 60 },
      ]),
    });
    expect(found("exit.unsupported", () => halves(100)).status).toBe("pass");
    expect(
      found("exit.unsupported", () => ({ ...halves(100), outline: rectangle(0, 0, 100, 50) })).status,
    ).toBe("attend");
  });
});
