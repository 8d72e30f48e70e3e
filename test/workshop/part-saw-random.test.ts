import fc from "fast-check";
import { expect, it } from "vitest";
import { pointOn } from "../../src/geometry/path-measures/segment-places.ts";
import { segmentsOf } from "../../src/geometry/segment.ts";
import { partCuts } from "../../src/workshop/bandsaw/part-cuts.ts";
import { upForJoint } from "../../src/workshop/bandsaw/part-sequence.ts";
import { partBlank } from "../../src/workshop/stock/part-blank.ts";
import { distanceTo } from "../geometry/random/distance.ts";
import { inside, polygonOf } from "../simple-ring.ts";
import { wingLikes } from "./guided/wing-like.ts";

const saws = [
  {
    ...{ id: "saw", throat: 425, height: 305 },
    blades: [
      { width: 3.2, kerf: 0.8 },
      { width: 6.4, kerf: 0.9 },
    ],
  },
];
const thickness = 24;

it("random wings are sawn at their distance all round and at both arrises of the joint, or have no line; counted", () => {
  const seen = { all: 0, sawn: 0, none: 0, hollow: 0, corners: 0, backUp: 0, followed: 0, relief: 0 };
  fc.assert(
    fc.property(
      wingLikes,
      fc.integer({ min: -20, max: 20 }),
      fc.constantFrom(1.6, 2, 3),
      (wing, tilt, allowance) => {
        const { outline } = wing!;
        const bevel = (tilt * Math.PI) / 180;
        const out = allowance + 4;
        const low = out / Math.cos(bevel) + Math.max(0, -thickness * Math.tan(bevel));
        const margin = { head: out, tail: out, low, high: out };
        const { place: blank } = partBlank.work({ outline, thickness, planed: 1, margin, least: 305 });
        const up = upForJoint(tilt);
        const joint = segmentsOf(outline)[0]!;
        const tail = [joint.to.x, joint.to.y] as const;
        const shape = { kind: "wing" as const, outline, tail, bevel: tilt, up, thickness };
        const { saw, sawn } = partCuts.work({ shape, blank, height: 40, allowance, saws });
        seen.all += 1;
        if (sawn.kind === "no-line") {
          seen.none += 1;
          return;
        }
        if (saw.kind !== "ok") throw new Error("no saw");
        seen.sawn += 1;
        const arcs = segmentsOf(outline).filter((one) => one.kind === "arc");
        if (arcs.some((one) => one.kind === "arc" && one.sweep < 0)) seen.hollow += 1;
        if (sawn.tight.some(({ radius }) => radius === 0)) seen.corners += 1;
        if (up === "back") seen.backUp += 1;
        if (sawn.tight.length === 0) seen.followed += 1;
        if (sawn.tight.some(({ relief }) => relief.kind === "cut")) seen.relief += 1;
        const wanted = allowance + saw.blade.kerf / 2;
        const ring = polygonOf(outline);
        for (const { cut, path } of sawn.lines) {
          if (cut === "joint") continue;
          for (const segment of segmentsOf(path))
            for (const share of [0, 0.25, 0.5, 0.75, 1]) {
              const { x, y } = pointOn(segment, share);
              expect(distanceTo([outline], x, y)).toBeGreaterThan(wanted - 1e-4);
              expect(inside(ring, [x, y])).toBe(false);
            }
        }
        // Both arrises of the joint's face lie as far from the blade's plane; the back one is further out by the bevel.
        const [a, b] = sawn.lines.find(({ cut }) => cut === "joint")!.path.points as [never, never] as {
          x: number;
          y: number;
        }[];
        const length = Math.hypot(b!.x - a!.x, b!.y - a!.y);
        const across = ({ x, y }: { x: number; y: number }) =>
          ((b!.x - a!.x) * (y - a!.y) - (b!.y - a!.y) * (x - a!.x)) / length;
        const normal = { x: -joint.to.y / Math.hypot(...tail), y: joint.to.x / Math.hypot(...tail) };
        for (const [end, down] of [
          [joint.from, 0],
          [joint.to, 0],
          [joint.from, thickness],
          [joint.to, thickness],
        ] as const) {
          const set = down * Math.tan(bevel);
          const arris = { x: end.x + normal.x * set, y: end.y + normal.y * set };
          const under = up === "front" ? down : thickness - down;
          const away = across(arris) * Math.cos(bevel) - under * Math.sin(Math.abs(bevel));
          expect(away).toBeCloseTo(wanted, 5);
        }
        for (const { relief } of sawn.tight) {
          if (relief.kind !== "cut") continue;
          for (const { x, y } of relief.path.points)
            expect(distanceTo([outline], x, y)).toBeGreaterThan(wanted - 1e-4);
        }
      },
    ),
    { seed: 7, numRuns: 150 },
  );
  expect(seen.sawn / seen.all).toBeGreaterThan(0.8);
  for (const hard of ["hollow", "corners", "backUp", "followed", "relief"] as const)
    expect(seen[hard] / seen.all, `${hard} ${JSON.stringify(seen)}`).toBeGreaterThan(0.1);
});
