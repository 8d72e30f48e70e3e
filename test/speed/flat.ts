import { pathToFileURL } from "node:url";
import { offsetPath, type PathOffset } from "../../src/geometry/offset/offset-path.ts";
import type { Path } from "../../src/geometry/path.ts";
import { outlinesOf } from "../../src/geometry/region.ts";
import { body, outlines } from "../geometry/outlines/outlines.ts";
import { drawingOutline, engineOffset } from "./outline-makers.ts";
import { median, timePairs, warmUp } from "./pairs.ts";
import type { Row } from "./row.ts";

/** What each named outline is offset by, mm. */
const distances: Record<keyof typeof outlines, number> = {
  "rounded rectangle": 6,
  "body of 60 arcs": 6,
  "body of 180 arcs": 6,
  wing: 6,
  "waisted body": -38,
  "comb of 40 teeth": 1,
  spiral: 1,
};

/** Timings of the flat geometry, medians of pairs timed in turn within one run. */
export async function flatRows(): Promise<Row[]> {
  const rows: Row[] = [];
  for (const [name, by] of Object.entries(distances) as [keyof typeof outlines, number][])
    rows.push(...(await outlineRows(name, outlines[name], by)));
  return [...rows, ...growthRows()];
}

async function outlineRows(name: string, path: Path, by: number): Promise<Row[]> {
  const ours = () => offsetPath(path, by);
  const what = `offset of ${name}`;
  const engine = timePairs(ours, await engineOffset(path, by, 0.001), 15);
  const drawing = timePairs(ours, drawingOutline(path, by), 3);
  const against =
    drawing.threw === undefined
      ? "faster than makerjs outline"
      : `faster than makerjs outline (threw: ${drawing.threw})`;
  return [
    row(what, engine.ours, "faster than the polygon engine at 0.001 mm", engine.other / engine.ours),
    row(what, drawing.ours, against, drawing.other / drawing.ours),
    {
      name: `${what}, segments`,
      median: segmentsIn(ours()),
      unit: "segments",
      against: "segments of the source",
      ratio: segmentsIn(ours()) / path.points.length,
    },
  ];
}

function row(name: string, time: number, against: string, ratio: number): Row {
  return { name, median: time, unit: "ms", against, ratio };
}

function segmentsIn(result: PathOffset): number {
  if (result.outcome === "ok") return result.path.points.length;
  if (result.outcome !== "split") return 0;
  return outlinesOf(result.region).reduce((sum, { points }) => sum + points.length, 0);
}

/**
 * How time grows: for each size, what n log n would have made of the time for 100 segments, over what it took. All sizes
 * are timed in turn.
 */
function growthRows(): Row[] {
  const sizes = [100, 300, 1_000, 2_000, 3_000, 10_000];
  const bodies = sizes.map((size) => body(size));
  const times = sizes.map((): number[] => []);
  for (const path of bodies) warmUp(() => offsetPath(path, 6), 300);
  for (let round = 0; round < 12; round++) {
    sizes.forEach((size, k) => {
      const often = Math.ceil(10_000 / size);
      const start = performance.now();
      for (let i = 0; i < often; i++) offsetPath(bodies[k]!, 6);
      times[k]!.push((performance.now() - start) / often);
    });
  }
  const first = median(times[0]!);
  return sizes.map((size, k) => {
    const time = median(times[k]!);
    const expected = (first * size * Math.log(size)) / (100 * Math.log(100));
    return row(`offset of ${size} arcs`, time, "faster than n log n from 100", expected / time);
  });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  for (const { name, median, unit, against, ratio } of await flatRows())
    console.log(
      `${name.padEnd(40)} ${median.toPrecision(4).padStart(9)} ${unit}  ${ratio.toPrecision(3)} x ${against}`,
    );
}
