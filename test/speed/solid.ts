import { pathToFileURL } from "node:url";
import measurements from "@jscad/modeling/src/measurements/index.js";
import booleans from "@jscad/modeling/src/operations/booleans/index.js";
import extrusions from "@jscad/modeling/src/operations/extrusions/index.js";
import transforms from "@jscad/modeling/src/operations/transforms/index.js";
import primitives from "@jscad/modeling/src/primitives/index.js";
import { fairCurve } from "../../src/geometry/fair/fair-curve.ts";
import { fairPath } from "../../src/geometry/fair/fair-path.ts";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import { greedyArcs } from "../geometry/fair/greedy-rival.ts";
import { shapes } from "../geometry/fair/shapes.ts";
import { circle, moved, raised, rectangle, sectionAt } from "../geometry/solid/recipes.ts";
import { median } from "./pairs.ts";
import type { Row } from "./row.ts";

function timed(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** Medians (ms) of two works run by turns, after each has run warm. */
function pair(ours: () => void, theirs: () => void, rounds: number, warm: number): [number, number] {
  for (let i = 0; i < warm; i++) {
    ours();
    theirs();
  }
  const [a, b]: [number[], number[]] = [[], []];
  for (let i = 0; i < rounds; i++) {
    a.push(timed(ours));
    b.push(timed(theirs));
  }
  return [median(a), median(b)];
}

/** The sides of a polygon that a circle of a radius takes at chord error 0.01 in our faceting: theirs gets as many. */
function sides(kernel: Kernel, radius: number): number {
  const made = mesh(kernel, raised(circle(radius), 1));
  return made.kind === "ok" ? made.mesh.positions.length / 6 : 32;
}

function volumeOf(kernel: Kernel, solid: Solid): number {
  const made = mesh(kernel, solid);
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  return meshMeasures(made.mesh).volume;
}

type Rival = { name: string; solid: Solid; theirs: () => number };

/** The same solids by both libraries, down to the facets. */
function rivals(kernel: Kernel): Rival[] {
  const { cuboid, cylinder } = primitives;
  const [few, more] = [sides(kernel, 4), sides(kernel, 10)];
  const drill = (radius: number, height: number, x: number, y: number, segments: number) =>
    cylinder({ radius, height, center: [x, y, height / 2], segments });
  const holes = Array.from(
    { length: 24 },
    (_, i) => [20 + 30 * (i % 6), 20 + 30 * Math.floor(i / 6)] as const,
  );
  const plate = raised(rectangle(190, 130), 6);
  const theirPlate = () => cuboid({ size: [190, 130, 6], center: [95, 65, 3] });
  const cone: Solid = { kind: "loft", sections: [sectionAt(0, circle(10)), sectionAt(20, circle(5))] };
  return [
    {
      name: "plate with 24 holes",
      solid: { kind: "cut", from: plate, by: holes.map(([x, y]) => moved(raised(circle(4), 6), x, y, 0)) },
      theirs: () =>
        measurements.measureVolume(
          booleans.subtract(theirPlate(), ...holes.map(([x, y]) => drill(4, 6, x, y, few))),
        ),
    },
    {
      name: "two cylinders joined at a right angle",
      solid: {
        kind: "union",
        solids: [
          raised(circle(10), 40),
          {
            kind: "place",
            solid: raised(circle(4), 30),
            frame: {
              origin: { x: 0, y: 0, z: 20 },
              u: { x: 0, y: 0, z: -1 },
              v: { x: 0, y: 1, z: 0 },
              w: { x: 1, y: 0, z: 0 },
            },
          },
        ],
      },
      theirs: () =>
        measurements.measureVolume(
          booleans.union(
            drill(10, 40, 0, 0, more),
            transforms.translate([0, 0, 20], transforms.rotateY(Math.PI / 2, drill(4, 30, 0, 0, few))),
          ),
        ),
    },
    {
      name: "cone less a box",
      solid: { kind: "cut", from: cone, by: [moved(raised(rectangle(20, 20), 30), 0, 0, -5)] },
      theirs: () =>
        measurements.measureVolume(
          booleans.subtract(
            primitives.cylinderElliptic({
              height: 20,
              startRadius: [10, 10],
              endRadius: [5, 5],
              center: [0, 0, 10],
              segments: more,
            }),
            cuboid({ size: [20, 20, 30], center: [10, 10, 10] }),
          ),
        ),
    },
    {
      name: "extruded polygon, no cut",
      solid: raised(rectangle(60, 40), 12),
      theirs: () =>
        measurements.measureVolume(
          extrusions.extrudeLinear(
            { height: 12 },
            primitives.rectangle({ size: [60, 40], center: [30, 20] }),
          ),
        ),
    },
  ];
}

/** Growth of the process's memory (MB) over a thousand cuts, every shape freed; and over the same cuts of theirs. */
function memoryRow(kernel: Kernel): Row {
  const cut: Solid = {
    kind: "cut",
    from: raised(rectangle(60, 40), 8),
    by: [moved(raised(circle(5), 8), 30, 20, 0)],
  };
  const megabytes = () => process.memoryUsage().rss / 1e6;
  for (let i = 0; i < 200; i++) mesh(kernel, cut);
  const before = megabytes();
  for (let i = 0; i < 1000; i++) mesh(kernel, cut);
  const grown = Math.max(0, megabytes() - before);
  if (kernel.alive() !== 0) throw new Error(`${kernel.alive()} shapes not freed`);
  return {
    name: "memory over 1,000 cuts",
    median: grown,
    unit: "MB",
    against: "before them",
    ratio: (before + grown) / before,
  };
}

function fairRows(): Row[] {
  return shapes.map(({ name, stations, closed }) => {
    const ours = () => {
      const outcome = fairCurve(stations, { closed });
      return outcome.kind === "ok" ? fairPath(outcome.curve) : undefined;
    };
    const greedy = () => {
      const outcome = fairCurve(stations, { closed });
      return outcome.kind === "ok" ? outcome.curve.spans.reduce((sum, s) => sum + greedyArcs(s, 0.01), 0) : 0;
    };
    const [mine, theirs] = pair(ours, greedy, 41, 30);
    const made = ours();
    const arcs = made?.kind === "ok" ? made.arcs : 0;
    return {
      name: `fair curve: ${name}`,
      median: mine,
      unit: "ms",
      against: `faster than greedy longest biarcs (${arcs} arcs against ${greedy()})`,
      ratio: theirs / mine,
    };
  });
}

/** Solids beside the same work in the polygon-tree CSG library, memory over a thousand cuts, fair curves. */
export async function solidRows(): Promise<Row[]> {
  const kernel = await loadKernel();
  const rows: Row[] = rivals(kernel).map(({ name, solid, theirs }) => {
    const [mine, other] = [volumeOf(kernel, solid), theirs()];
    const apart = Math.abs(mine / other - 1);
    if (!(apart < 0.01)) throw new Error(`${name}: volumes ${mine} and ${other}`);
    const [ours, against] = pair(() => volumeOf(kernel, solid), theirs, 11, 3);
    return {
      name: `solid: ${name}`,
      median: ours,
      unit: "ms",
      against: "faster than @jscad/modeling booleans",
      ratio: against / ours,
    };
  });
  return [...rows, memoryRow(kernel), ...fairRows()];
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  for (const { name, median, unit, against, ratio } of await solidRows()) {
    console.log(`${name}: ${median.toFixed(2)} ${unit}, ${ratio.toFixed(2)} times ${against}`);
  }
}
