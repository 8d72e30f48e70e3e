import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { FullSize } from "../../src/drawing/tiles/laid-out.ts";
import type { Page } from "../../src/drawing/tiles/tile-page.ts";
import { pdfBytes } from "../../src/files/pdf/write-pdf.ts";
import { facet } from "../../src/geometry/facet.ts";
import { top } from "../samples.ts";
import { ezdxf, python } from "./tool.ts";

/** What full-size sheets are read with. */
export const pdfTools = {
  name: "qpdf, poppler-utils or python3-shapely",
  command: "sh",
  args: ["-c", `qpdf --version && pdftoppm -v && ${ezdxf.command} -c 'import shapely, numpy'`],
};

/** What the reader finds of one file; mm. */
export type ReadSheets = {
  readonly faults: readonly string[];
  readonly pages: number;
  readonly square: number;
  readonly inside: number;
  readonly matches: number;
  readonly joined: number;
  readonly covered: number;
  readonly smallest: number;
  readonly corner: readonly (readonly [number, number])[];
  readonly between?: number;
  readonly words: readonly string[];
};

/** Sheets to be read, and two of their words whose distance is asked for. */
export type Job = {
  readonly name: string;
  readonly given: FullSize;
  readonly pages: readonly Page[];
  readonly between?: readonly [string, string];
};

/** Writes each job's pages to a folder, as a PDF by its number, and reads them all back at once. */
export async function readSheets(folder: string, jobs: readonly Job[]): Promise<Map<string, ReadSheets>> {
  const list = [];
  for (const [i, { given, pages, between }] of jobs.entries()) {
    const pdf = join(folder, `${i}.pdf`);
    writeFileSync(pdf, await pdfBytes(pages, "test"));
    execFileSync("qpdf", ["--check", pdf], { stdio: "ignore" });
    const paths = given.flat.shapes.map(({ path }) => {
      const { points, closed } = facet(path, 0.005);
      return (closed ? [...points, points[0]!] : points).map(({ x, y }) => [x, y]);
    });
    const { width, margin } = given.paper;
    list.push({ pdf, width, margin, scale: given.paper.scale ?? [1, 1], paths, between });
  }
  const job = join(folder, "job.json");
  writeFileSync(job, JSON.stringify(list));
  const read = python(join(top, "test", "readers", "read_pdf.py"), job) as ReadSheets[];
  return new Map(jobs.map(({ name }, i) => [name, read[i]!]));
}
