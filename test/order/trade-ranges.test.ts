import { describe, expect, it } from "vitest";
import { specOf } from "../samples.ts";

type Ranges = Readonly<Record<string, readonly [least: number, most: number]>>;

/** Ranges that the trade gives for four strings, mm: published or general trade knowledge. */
const saw: Ranges = { "saw.allowance": [1.6, 3] };
const violin: Ranges = {
  ...saw,
  "string.length": [325, 330],
  "bridge.spread": [33, 34.5],
  "string.clearance.end.high": [3, 4],
  "string.clearance.end.low": [5, 6],
  "neck.thickness.nut": [18.5, 19.5],
  "neck.thickness.heel": [20.5, 21.5],
};
const trade: Readonly<Record<string, Ranges>> = {
  sedge: violin,
  thrift: violin,
  mallow: {
    ...saw,
    "string.length": [359, 387],
    "bridge.spread": [35, 38],
    "string.clearance.end.high": [4, 5],
    "string.clearance.end.low": [6, 6.5],
    "neck.thickness.heel": [20, 21],
  },
  bulrush: {
    ...saw,
    "string.length": [680, 695],
    "bridge.spread": [46, 48],
    "fingerboard.length": [580, 590],
    "neck.thickness.nut": [28, 29],
    "neck.thickness.heel": [31, 33],
  },
};

describe("a design's ranges", () => {
  it.each(Object.entries(trade))("of %s are no narrower than the trade's", (design, ranges) => {
    const { values } = specOf(design, 4);
    for (const [id, [least, most]] of Object.entries(ranges)) {
      expect(values[id]!.least, id).toBeLessThanOrEqual(least);
      expect(values[id]!.most, id).toBeGreaterThanOrEqual(most);
    }
  });
});
