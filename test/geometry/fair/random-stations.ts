import fc from "fast-check";
import type { Station } from "../../../src/geometry/fair/station.ts";

/** Stations to draw a curve through. */
export type Draft = { readonly closed: boolean; readonly stations: readonly Station[] };

const corner = fc.oneof(
  { weight: 6, arbitrary: fc.constant(undefined) },
  { weight: 1, arbitrary: fc.constant(0) },
  { weight: 1, arbitrary: fc.double({ min: 0.5, max: 4, noNaN: true }) },
);

/** A line of stations that turns by up to 60 degrees at each, with names and corners here and there. */
const open: fc.Arbitrary<Draft> = fc
  .array(
    fc.record({
      step: fc.double({ min: 12, max: 60, noNaN: true }),
      turn: fc.double({ min: -60, max: 60, noNaN: true }),
      named: fc.boolean(),
      corner,
    }),
    { minLength: 2, maxLength: 8 },
  )
  .map((legs) => {
    let [x, y, angle] = [0, 0, 0];
    const stations: Station[] = legs.map(({ step, turn, named, corner }, i) => {
      const at = { x, y };
      angle += (turn * Math.PI) / 180;
      x += step * Math.cos(angle);
      y += step * Math.sin(angle);
      const inner = i > 0 && i < legs.length - 1;
      return {
        ...at,
        ...(named ? { id: `s${i}` } : {}),
        ...(inner && corner !== undefined ? { corner } : {}),
      };
    });
    return { closed: false, stations };
  });

/** A ring of stations round a middle, uneven in angle and distance. */
const ring: fc.Arbitrary<Draft> = fc
  .array(
    fc.record({
      gap: fc.double({ min: 0.6, max: 1.4, noNaN: true }),
      out: fc.double({ min: 60, max: 110, noNaN: true }),
      named: fc.boolean(),
      corner,
    }),
    { minLength: 5, maxLength: 9 },
  )
  .map((legs) => {
    const whole = legs.reduce((sum, { gap }) => sum + gap, 0);
    let sum = 0;
    const stations: Station[] = legs.map(({ gap, out, named, corner }, i) => {
      const angle = (2 * Math.PI * sum) / whole;
      sum += gap;
      return {
        x: out * Math.cos(angle),
        y: out * Math.sin(angle),
        ...(named ? { id: `s${i}` } : {}),
        ...(corner !== undefined ? { corner } : {}),
      };
    });
    return { closed: true, stations };
  });

/** Stations as a designer would set them: open or closed, some named, some corners. */
export const drafts: fc.Arbitrary<Draft> = fc.oneof(open, ring);

const odd = fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, 1e300, 1e6, 5e-324, 1e-7);

/** Stations thrown anywhere on a coarse grid, and numbers that are none: repeats, hairpins and worse. */
export const wildDrafts: fc.Arbitrary<Draft> = fc.record({
  closed: fc.boolean(),
  stations: fc.array(
    fc
      .record({
        x: fc.oneof(
          { weight: 30, arbitrary: fc.integer({ min: -3, max: 3 }) },
          { weight: 1, arbitrary: odd },
        ),
        y: fc.oneof(
          { weight: 30, arbitrary: fc.integer({ min: -3, max: 3 }) },
          { weight: 1, arbitrary: odd },
        ),
        corner: fc.oneof(
          { weight: 5, arbitrary: fc.constant(undefined) },
          { weight: 2, arbitrary: fc.double({ min: -1, max: 5, noNaN: true }) },
        ),
        id: fc.oneof(
          { weight: 8, arbitrary: fc.constant(undefined) },
          { weight: 1, arbitrary: fc.constantFrom("a", "b", "c") },
        ),
      })
      .map(({ x, y, corner, id }) => ({
        x,
        y,
        ...(corner === undefined ? {} : { corner }),
        ...(id === undefined ? {} : { id }),
      })),
    { maxLength: 8 },
  ),
});
