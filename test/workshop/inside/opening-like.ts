import fc from "fast-check";
import type { Path } from "../../../src/geometry/path.ts";
import { laid, relievedBox, roundedBox } from "../../../src/instrument/recess/outlines.ts";
import { wingLike } from "../guided/wing-like.ts";

/** Cutters and the guides that ride with them: larger, as large, smaller; mm. */
const pairs = [
  ...([
    [6.35, 10],
    [6.35, 16],
    [8, 16],
    [3, 10],
  ] as const),
  ...([
    [8, 8],
    [12.68, 12.68],
    [8, 6],
    [12.68, 8],
    [16, 8],
  ] as const),
] as const;

const pair = fc.constantFrom(...pairs);
const size = fc.integer({ min: 12, max: 70 });
const turned = fc.integer({ min: -180, max: 180 });
const corner = fc.constantFrom(0, 1, 2, 3.2, 4, 6, 9);

const boxes = fc
  .record({ length: size, width: size, corner, turned })
  .map(({ length, width, corner, turned }) => ({
    shape: "box" as const,
    recess: laid(roundedBox(length, width, corner), turned, { x: 40, y: -7 }),
  }));

const freed = fc
  .record({ length: size, width: size, corner: fc.constantFrom(3.2, 4, 6), turned })
  .map(({ length, width, corner, turned }) => {
    const made = relievedBox(length, width, corner);
    return { shape: "freed" as const, recess: made && laid(made, turned, { x: -30, y: 12 }) };
  });

const waved = fc
  .record({
    length: fc.integer({ min: 60, max: 160 }),
    outs: fc.array(fc.integer({ min: 18, max: 60 }), { minLength: 1, maxLength: 4 }),
    corner: fc.constantFrom(0, 2, 4.5, 7),
  })
  .map(({ length, outs, corner }) => {
    const through = outs.map(
      (out, i) => [(length * (outs.length - i)) / (outs.length + 1), out] as [number, number],
    );
    const made = wingLike([length, -5], [length, 24], through, [0, 20], corner);
    return { shape: "waved" as const, recess: made?.outline };
  });

/** Random recesses with a cutter and a guide: boxes with corners round or sharp, boxes with freed corners, and outlines that wave. */
export const openingLikes = fc
  .tuple(fc.oneof(boxes, freed, waved), pair)
  .filter(([{ recess }]) => recess !== undefined)
  .map(([{ shape, recess }, [cutter, guide]]) => ({ shape, recess: recess as Path, cutter, guide }));
