import { describe, expect, it } from "vitest";
import { facet } from "../../../src/geometry/facet.ts";
import { extentsOf, pathLength, signedArea } from "../../../src/geometry/measure.ts";
import { nearestPlace } from "../../../src/geometry/path-measures/nearest-place.ts";
import { ordinatesAt } from "../../../src/geometry/path-measures/ordinates-at.ts";
import { placeAlong } from "../../../src/geometry/path-measures/place-along.ts";
import { segmentsOf } from "../../../src/geometry/segment.ts";
import { fromFrame } from "../../../src/geometry/solid/frame.ts";
import { madeBody } from "../../../src/instrument/body/body.ts";
import { bowClearance } from "../../../src/instrument/bow/clearance.ts";
import { contradictions } from "../../../src/instrument/contradictions.ts";
import { coreAxes } from "../../../src/instrument/core/from-core.ts";
import { instrument } from "../../../src/instrument/instrument.ts";
import { dimensionOf, type Spec } from "../../../src/order/spec.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { alone, forced } from "../../forced.ts";
import { type BodyKind, bodySpec } from "../../own-body.ts";
import { designs, everyCount, specOf } from "../../samples.ts";
import { crossings, polygonOf } from "../../simple-ring.ts";

const kinds: readonly BodyKind[] = [
  { core: "recess", corners: "none" },
  { core: "through", corners: "none" },
  { core: "recess", corners: "four" },
];
const all = designs.thrift.flatMap((count) => kinds.map((kind) => ({ count, ...kind })));
const store = memoryStore();
const problemsOf = (spec: Spec) => contradictions(spec, instrument(spec, store));

/** What a bow on the outer strings, treble and bass, leaves over a body's front. */
function bowOver(spec: Spec) {
  const of = (id: string) => dimensionOf(spec, id);
  const made = instrument(spec, store);
  const axes = coreAxes(made.core);
  const { outline } = madeBody(made.body!);
  const front = facet(outline.path, 0.2).points.map(({ x, y }) => fromFrame(axes, x, y, -of("body.drop")));
  return ([1, -1] as const).map((side) => {
    const i = side === 1 ? 0 : -1;
    const place = (where: "nut" | "bridge") => ({
      ...{ y: made.layout[where].at(i)!, z: made.heights[where].at(i)! },
    });
    const tilt = side === 1 ? made.bow.outermost.treble : made.bow.outermost.bass;
    const string = { length: of("string.length"), nut: place("nut"), bridge: place("bridge") };
    return store.answer(bowClearance, {
      hair: { string, side, tilt },
      ...{
        from: made.taper.length + 2,
        to: of("string.length") - 4,
        surfaces: { flats: [front], strips: [] },
      },
      corner: { x: made.taper.length, y: (side * made.taper.end) / 2, z: of("fingerboard.edge") },
    }).value;
  });
}

it("only thrift has a body in one piece, and no design has it beside wings", () => {
  for (const { design, count } of everyCount) {
    const { body, wings } = specOf(design, count);
    expect(body !== null).toBe(design === "thrift");
    expect(wings === null).toBe(body !== null);
  }
});

describe.each(all)("a body for $count strings, core $core, corners $corners", ({ count, ...kind }) => {
  const spec = bodySpec(count, kind);
  const made = instrument(spec, store);
  const { outline, recess } = madeBody(made.body!);
  const of = (id: string) => dimensionOf(spec, id);
  const widthAt = (along: number) => {
    const found = ordinatesAt(segmentsOf(outline.path), of("body.start") + along);
    return found.at(-1)! - found[0]!;
  };

  it("can be made", () => expect(problemsOf(spec)).toEqual([]));

  it("is one ring, counter-clockwise, without crossings, and alike on both sides", () => {
    expect(signedArea(outline.path)).toBeGreaterThan(0);
    expect(crossings(polygonOf(outline.path))).toBe(0);
    const turned = outline.path.points.map(({ x, y }) => ({ x, y: -y }));
    for (const place of turned)
      expect(Math.min(...outline.path.points.map(({ x, y }) => Math.hypot(x - place.x, y - place.y)))).toBe(
        0,
      );
  });

  it("has its bouts' widths where they are set, its length and its head end", () => {
    for (const bout of ["upper", "waist", "lower"])
      expect(Math.abs(widthAt(of(`body.${bout}.at`)) - of(`body.${bout}.width`))).toBeLessThan(0.025);
    const { minX, maxX, maxY } = extentsOf([outline.path])!;
    expect(minX).toBeCloseTo(of("body.start"), 9);
    expect(maxX - minX).toBeCloseTo(of("body.length"), 9);
    // The greatest width is not at the station to the last digit, and hardly more.
    expect(2 * maxY).toBeGreaterThanOrEqual(of("body.lower.width") - 0.025);
    expect(2 * maxY).toBeLessThan(of("body.lower.width") + (kind.corners === "four" ? 2 : 0.5));
    const head = outline.path.points.filter(({ x }) => Math.abs(x - minX) < 1e-6).map(({ y }) => y);
    expect(head).toHaveLength(2);
    // The corner's rounding starts about a radius from the corner, less as the rim leaves at less than a right angle.
    const left = of("body.head.width") - 2 * of("body.head.corner");
    expect(head[1]! - head[0]!).toBeGreaterThan(left);
    expect(head[1]! - head[0]!).toBeLessThan(of("body.head.width"));
  });

  it("turns without a corner but where the design has some, and its corners have their radius", () => {
    const segments = segmentsOf(outline.path);
    const corners = segments.filter(
      (segment) => segment.kind === "arc" && Math.abs(segment.radius - 6) < 1e-6,
    );
    expect(corners).toHaveLength(kind.corners === "four" ? 4 : 0);
    const way = (i: number, end: 0 | 1) => {
      const segment = segments[i]!;
      if (segment.kind === "line")
        return Math.atan2(segment.to.y - segment.from.y, segment.to.x - segment.from.x);
      return segment.start + segment.sweep * end + (Math.sign(segment.sweep) * Math.PI) / 2;
    };
    for (const i of segments.keys()) {
      const turn = way((i + 1) % segments.length, 0) - way(i, 1);
      expect(Math.abs(Math.sin(turn / 2))).toBeLessThan(1e-5);
    }
  });

  it("leaves the wood that it tells beside the core, by another way of measuring", () => {
    const { wall } = made.body!;
    const rim = polygonOf(outline.rim).map(([x, y]) => ({ x, y }));
    const length = pathLength(recess.side);
    const near = Array.from({ length: 300 }, (_, i) => {
      const place = placeAlong(recess.side, (i / 299) * length);
      if (place.kind !== "ok") throw new Error(place.kind);
      return Math.min(...rim.map(({ x, y }) => Math.hypot(x - place.point.x, y - place.point.y)));
    });
    expect(Math.abs(Math.min(...near) - wall.left)).toBeLessThan(0.1);
    expect(wall.left).toBeGreaterThan(of("body.wall.least"));
    const at = nearestPlace(outline.rim, { x: wall.at, y: recess.half.head });
    expect(at.kind === "ok" && at.distance).toBeCloseTo(wall.left, 3);
  });

  it("lies out of the way of a bow on the outer strings by 5 mm and 3 degrees", () => {
    for (const { surface, room } of bowOver(spec)) {
      expect(surface).toBeGreaterThan(5);
      expect(room).toBeGreaterThan(3);
    }
  });
});

it("a body whose waist is in the bow's way is found", () => {
  const spec = forced(specOf("thrift", 7), { "body.waist.width": 116, "body.drop": 4 });
  expect(Math.min(...bowOver(spec).map(({ surface }) => surface))).toBeLessThan(0);
});

describe("the design's own ranges", () => {
  const moved = [
    "neck.heel.end",
    "neck.transition.end",
    "core.start",
    "core.end",
    "core.slope",
    "core.depth",
  ];
  const ids = Object.keys(specOf("thrift", 4).values).filter(
    (id) => id.startsWith("body.") || moved.includes(id),
  );
  it("leave no body that can't be made, each end of each alone, but one whose floor is asked thicker", () => {
    expect(ids.length).toBeGreaterThan(20);
    const odd: string[] = [];
    for (const count of [4, 7]) {
      const { values } = specOf("thrift", count);
      for (const id of [...ids, "core.width", "neck.corner", "core.taper"])
        for (const end of ["least", "most"] as const) {
          const at = values[id]![end];
          const text = `set:\n  ${id}: ${at} ${values[id]!.kind === "angle" ? "deg" : "mm"}\n`;
          const found = problemsOf(alone(specOf("thrift", count, text)));
          odd.push(...found.map(({ hint }) => `${id} ${end}: ${hint}`));
        }
    }
    const floors = [
      "body.drop least: raise body.thickness to 25.5 mm",
      "body.floor.least most: raise body.thickness to 26 mm",
    ];
    // The least length is for the shortest core. Rests, placed for the design's own body, are told of where they are tried.
    const short = (to: number) => `body.length least: raise body.length to ${to} mm`;
    expect(odd).toEqual([short(280.81), ...floors, short(286.84), ...floors]);
  });
});
