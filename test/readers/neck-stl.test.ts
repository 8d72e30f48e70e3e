import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { makePacks } from "../../src/pack/make.ts";
import { memoryStore } from "../../src/step/store.ts";
import { orderFiles } from "../samples.ts";
import { describeWith, numpy, python } from "./tool.ts";

type Read = Readonly<
  Record<string, { readonly least: number[]; readonly most: number[]; readonly heights: readonly number[][] }>
>;

const orders = orderFiles.filter((file) => /SY-04(17|18|22|25|30)/.test(file));
const script = join(import.meta.dirname, "read_stl.py");

describeWith(numpy, "the neck's STL of five samples, sliced by numpy", () => {
  let out = "";
  let read: Read = {};
  const reports = new Map<string, Record<string, number>>();

  /** Beside the middle of the back, where triangles meet, by a hair. */
  const lines = (report: Record<string, number>) => [
    `${report["neck.station.nut"]! + 1e-3},0.0017`,
    `${report["neck.station.heel"]! + 1e-3},0.0017`,
    // Recesses for the electronics reach from its back as far as behind the bridge: between the posts and the tail it is whole.
    `${report["core.end"]! - 30 + 1e-3},0.0017`,
  ];

  beforeAll(async () => {
    out = mkdtempSync(join(tmpdir(), "stl-"));
    const made = await makePacks({ orders, out, only: ["neck"], options: {} }, memoryStore());
    if (!made.ok) throw new Error("the samples can't be made");
    const jobs = made.value.map(({ folder }) => {
      const { dimensions } = JSON.parse(readFileSync(join(folder, "dimensions.json"), "utf8"));
      const full = Object.fromEntries(
        dimensions.map(({ id, value }: { id: string; value: number }) => [id, value]),
      );
      const whole = JSON.parse(
        readFileSync(
          join(import.meta.dirname, "../../models/approved", `${basename(folder).slice(0, 7)}.json`),
          "utf8",
        ),
      );
      const report = {
        ...Object.fromEntries(
          whole.dimensions.map(({ id, value }: { id: string; value: number }) => [id, value]),
        ),
        ...full,
      };
      const path = join(folder, "outlines", "neck.stl");
      reports.set(path, report);
      return [path, ...lines(report)].join(" ");
    });
    read = python(script, ...jobs.join(" -- ").split(" ")) as Read;
  });
  afterAll(() => rmSync(out, { recursive: true, force: true }));

  it("has the wood that the report names at both stations, within 0.02", () => {
    expect(Object.keys(read)).toHaveLength(orders.length);
    for (const [path, { heights }] of Object.entries(read)) {
      const report = reports.get(path)!;
      for (const [i, where] of ["nut", "heel"].entries()) {
        const [back, ...rest] = heights[i]!;
        expect(Math.abs(-back! - report[`neck.wood.${where}`]!), `${path} ${where}`).toBeLessThan(0.02);
        expect(rest.length).toBeGreaterThan(0);
      }
    }
  });

  it("has the core's depth, square from its sloping front, near its tail", () => {
    for (const [path, { heights }] of Object.entries(read)) {
      const report = reports.get(path)!;
      // An endpin's bore lies between them.
      const [back, front] = [heights[2]!.at(0), heights[2]!.at(-1)];
      const square = (front! - back!) * Math.cos((report["core.slope"]! * Math.PI) / 180);
      expect(Math.abs(square - report["core.depth"]!), path).toBeLessThan(0.02);
    }
  });

  it("is as long as from the head's tip to the core's end, and as deep as the lowest wood", () => {
    for (const [path, { least, most }] of Object.entries(read)) {
      const report = reports.get(path)!;
      expect(most[0]).toBeCloseTo(report["core.end"]!, 2);
      expect(Math.abs(least[2]! - report["neck.lowest"]!), path).toBeLessThan(0.02);
    }
  });
});
