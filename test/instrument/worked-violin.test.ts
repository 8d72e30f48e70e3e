import { describe, expect, it } from "vitest";
import { boardTop } from "../../src/instrument/fingerboard/surface.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";

/** The worked violin voice: sedge at 4 to 6 strings, thrift's strings at 7. Columns as the table has them. */
const table = {
  4: {
    nutGap: 4.82,
    nutSpread: 16.51,
    nutWidth: 24.11,
    boardEnd: 41.99,
    bridgeGap: 10.48,
    radius: 42.97,
    top: 17.75,
    height: 32.83,
    rise: 1.3,
    fall: 21.69,
    pitch: 11.17,
    tension: 219.6,
  },
  5: {
    nutGap: 4.45,
    nutSpread: 20.81,
    nutWidth: 28.31,
    boardEnd: 48.11,
    bridgeGap: 9.25,
    radius: 43.61,
    top: 19.94,
    height: 35.02,
    rise: 1.49,
    fall: 21.51,
    pitch: 10.0,
    tension: 269.6,
  },
  6: {
    nutGap: 4.25,
    nutSpread: 25.56,
    nutWidth: 33.06,
    boardEnd: 54.62,
    bridgeGap: 8.64,
    radius: 47.17,
    top: 21.84,
    height: 36.92,
    rise: 1.64,
    fall: 21.36,
    pitch: 9.5,
    tension: 311.6,
  },
  7: {
    nutGap: 4.05,
    nutSpread: 30.36,
    nutWidth: 37.86,
    boardEnd: 60.82,
    bridgeGap: 7.99,
    radius: 50.5,
    top: 23.72,
    height: 38.79,
    rise: 1.78,
    fall: 21.22,
    pitch: 9.0,
    tension: 348.6,
  },
} as const;

/** Nut widths that the trade's table allows, least and most. */
const nutWidths = { 4: [23.5, 24.5], 5: [27, 30], 6: [32, 34.5], 7: [36.5, 39] } as const;

describe.each(Object.entries(table))("the worked violin with %s strings", (count, row) => {
  const design = count === "7" ? "thrift" : "sedge";
  const { instrument, forces, spec } = modelOf(specOf(design, Number(count)), memoryStore());
  const { layout, taper, crown } = instrument;
  const total = forces.strings.tensions.reduce((sum, tension) => sum + tension, 0);

  it.each<[string, number, number, number]>([
    ["gap at the nut", layout.nutGap, row.nutGap, 0.01],
    ["spread at the nut", layout.nutSpread, row.nutSpread, 0.01],
    ["width of the nut", taper.nut, row.nutWidth, 0.01],
    ["width of the board's end", taper.end, row.boardEnd, 0.01],
    ["gap at the bridge", layout.bridgeGap, row.bridgeGap, 0.01],
    ["pitch at the bridge", layout.bridgeSpread / (layout.bridge.length - 1), row.pitch, 0.01],
    ["radius of the crown", crown.radius, row.radius, 0.01],
    ["top of the crown", crown.top, row.top, 0.01],
    ["height of the bridge", crown.height, row.height, 0.01],
    ["angle on the nut's side", forces.angles.rise, row.rise, 0.01],
    ["angle on the tail's side", forces.angles.fall, row.fall, 0.01],
    ["included angle", forces.angles.included, 157.0, 0.1],
    ["tension in all", total, row.tension, 0.1],
  ])("%s", (_, found, said, unit) => {
    expect(Math.abs(found - said)).toBeLessThanOrEqual(unit);
  });

  it("has a nut within the trade's widths", () => {
    const [least, most] = nutWidths[count as unknown as keyof typeof nutWidths];
    expect(taper.nut).toBeGreaterThanOrEqual(least);
    expect(taper.nut).toBeLessThanOrEqual(most);
  });

  it("has equal gaps, skin to skin, at nut and bridge, centred", () => {
    const d = spec.strings.map(({ diameter }) => diameter);
    for (const [centres, gap] of [
      [layout.nut, layout.nutGap],
      [layout.bridge, layout.bridgeGap],
    ] as const) {
      for (let i = 1; i < d.length; i++) {
        expect(centres[i - 1]! - d[i - 1]! / 2 - (centres[i]! + d[i]! / 2)).toBeCloseTo(gap, 9);
      }
      expect(centres[0]! + centres.at(-1)!).toBeCloseTo(0, 9);
    }
  });

  it("has every string at its clearance over the board's end, by the board's own surface", () => {
    const d = spec.strings.map(({ diameter }) => diameter);
    const over = instrument.heights.end.map((z, i) => {
      const y = layout.nut[i]! + ((layout.bridge[i]! - layout.nut[i]!) * 270) / 328;
      return z - d[i]! / 2 - boardTop(instrument.surface, 270, y);
    });
    const steps = over.map((_, i) => 3.5 + (2 * i) / (over.length - 1));
    for (const [i, gap] of over.entries()) expect(gap).toBeCloseTo(steps[i]!, 6);
  });

  it("has true string lengths that are each the distance from nut to bridge", () => {
    for (const [i, length] of instrument.runs.lengths.entries()) {
      const across = layout.bridge[i]! - layout.nut[i]!;
      const up = instrument.heights.bridge[i]! - instrument.heights.nut[i]!;
      expect(length ** 2).toBeCloseTo(328 ** 2 + across ** 2 + up ** 2, 3);
    }
  });

  it("presses less when the tailpiece rises: 1 mm is about a degree", () => {
    const height = spec.values["tailpiece.height"]!.value + 1;
    const raised = modelOf(
      specOf(design, Number(count), `set:\n  tailpiece.height: ${height}\n`),
      memoryStore(),
    );
    const opened = raised.forces.angles.included - forces.angles.included;
    expect(opened).toBeGreaterThan(0.9);
    expect(opened).toBeLessThan(1.3);
  });
});

it("tells a wrong table: the same comparison fails on a crown a tenth of a millimetre higher", () => {
  const { instrument } = modelOf(specOf("sedge", 4, "set:\n  fingerboard.edge: 5.6\n"), memoryStore());
  expect(Math.abs(instrument.crown.top - table[4].top)).toBeGreaterThan(0.05);
});
