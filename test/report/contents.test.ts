import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { contentsPage } from "../../src/files/html/contents-page.ts";
import type { Spec } from "../../src/order/spec.ts";
import { reportFor } from "../../src/pack/report-for.ts";
import { reportPackFiles } from "../../src/pack/report-pack-files.ts";
import { inchesOf, inchesText } from "../../src/report/inches.ts";
import { memoryStore } from "../../src/step/store.ts";
import { describeWith } from "../readers/tool.ts";
import { sampleText, specOf } from "../samples.ts";

const spec = specOf("sedge", 5, "revision: B\n");
const report = reportFor(spec, memoryStore());
const inch: Spec = { ...spec, shop: { ...spec.shop, units: "inch" } };
const nothing = { fingerprint: "a", readBack: null };
const made = [
  { path: "outlines/nut.dxf", content: "x", what: 'nut <blank> & "slots"', ...nothing },
  { path: "outlines/nut.svg", content: "x", what: "picture: nut", pictureOf: "nut", ...nothing },
  { path: "bench/set-up-neck.pdf", content: "x", what: "to print: a set-up", ...nothing },
  { path: "bench/traveller.pdf", content: "x", what: "to print: the traveller", ...nothing },
  { path: "plots/tension.svg", content: "x", what: "plot", pictureOf: "strings", ...nothing },
];
const held = [{ file: "bridge", check: "wall.bridge", why: "wood <breaks> out" }];
const files = (of: Spec) =>
  new Map(reportPackFiles(report, of, held, made).map(({ path, content }) => [path, String(content)]));
const page = files(spec).get("index.html")!;

const work = mkdtempSync(join(tmpdir(), "contents-"));
afterAll(() => rmSync(work, { recursive: true, force: true }));

describe("the contents page", () => {
  it("refers to nothing but files of its own pack and its own headings, and runs nothing", () => {
    const links = [...page.matchAll(/\b(?:href|src)="([^"]*)"/g)].map(([, link]) => link!);
    const own = [
      ...made.map(({ path }) => path),
      "manifest.json",
      "dimensions.json",
      "dimensions.md",
      "dimensions.csv",
      "checks.json",
    ];
    const anchors = [...page.matchAll(/\bid="([^"]*)"/g)].map(([, id]) => `#${id}`);
    expect([...new Set(links)].sort()).toEqual([...own, ...anchors].sort());
    expect(page).not.toMatch(/<script|<link|<iframe|@import|url\(|https?:|\/\/|\son[a-z]+=/i);
  });

  it("has every check by gravity, every number, what is held back, and words that are written out", () => {
    const answers = [...page.matchAll(/<tr class="(refuse|attend|pass)">/g)].map(([, answer]) => answer!);
    expect(answers).toHaveLength(report.checks.length);
    expect(answers).toEqual(
      answers.toSorted(
        (a, b) => ["refuse", "attend", "pass"].indexOf(a) - ["refuse", "attend", "pass"].indexOf(b),
      ),
    );
    for (const { id } of report.dimensions) expect(page).toContain(`<td>${id}</td>`);
    expect(page).toContain("<strong>bridge</strong>: wall.bridge refuses: wood &lt;breaks&gt; out");
    expect(page).toContain("nut &lt;blank&gt; &amp; &quot;slots&quot;");
    expect(page).not.toContain("inches");
    expect(files(inch).get("index.html")).toContain('data-label="inches (off by mm)"');
  });

  it("lists what is printed for the bench, the traveller first, and says where there is nothing", () => {
    const bench = page.slice(page.indexOf('<section id="bench">'), page.indexOf('<section id="pictures">'));
    const links = [...bench.matchAll(/href="([^"]*)"/g)].map(([, link]) => link);
    expect(links).toEqual(["bench/traveller.pdf", "bench/set-up-neck.pdf"]);
    const bare = String(
      reportPackFiles(report, spec, [], []).find(({ path }) => path === "index.html")!.content,
    );
    expect(bare).toContain("<p>Nothing.</p>");
  });

  it("is listed in the manifest, which lists everything but itself", () => {
    const listed = JSON.parse(files(spec).get("manifest.json")!).files.map(
      ({ path }: { path: string }) => path,
    );
    expect(listed).toEqual(
      [
        ...made.map(({ path }) => path),
        "checks.json",
        "dimensions.csv",
        "dimensions.json",
        "dimensions.md",
        "index.html",
      ].sort(),
    );
  });
});

describeWith({ name: "tidy", command: "tidy", args: ["-v"] }, "the contents page, by a validator", () => {
  const said = (text: string) => {
    const file = join(work, "index.html");
    writeFileSync(file, text);
    return spawnSync("tidy", ["-q", "-e", file], { encoding: "utf8" }).stderr;
  };

  it("has no fault, whatever was made and held back", () => {
    expect(said(page)).toBe("");
    expect(said(files(inch).get("index.html")!)).toBe("");
    expect(
      said(
        contentsPage({
          report: { ...report, checks: [], dimensions: [] },
          spec,
          held: [],
          pictures: [],
          files: [],
        }),
      ),
    ).not.toMatch(/Error/);
    expect(said(page.replace("</figure>", "").replace("</section>", ""))).toMatch(/missing|unexpected/);
  });
});

describe("inches beside mm", () => {
  it("are the nearest 1/64, shortest, with what that is off by", () => {
    expect(inchesOf(25.4)).toEqual({ text: "1", error: 0 });
    expect(inchesOf(0.1).text).toBe("0");
    expect(inchesOf(12.7).text).toBe("1/2");
    expect(inchesOf(-12.7).text).toBe("-1/2");
    expect(inchesText(326)).toBe("12 53/64 in (-0.17)");
    for (let i = 0; i < 2000; i++) {
      const mm = i * 0.3117 - 100;
      const { text, error } = inchesOf(mm);
      const value = text
        .replace("-", "")
        .split(" ")
        .reduce((sum, part) => {
          const [top, bottom = "1"] = part.split("/");
          return sum + Number(top) / Number(bottom);
        }, 0);
      const signed = (text.startsWith("-") ? -1 : 1) * value * 25.4;
      expect(Math.abs(signed - mm)).toBeLessThanOrEqual(25.4 / 128 + 1e-9);
      expect(signed - mm).toBeCloseTo(error, 9);
      expect(text).not.toMatch(/\d*[02468]\/(64|32|16|8|4|2)\b/);
    }
  });

  it("stand in the report where the shop asks for them, and for lengths alone", () => {
    const [plain, both] = [files(spec).get("dimensions.md")!, files(inch).get("dimensions.md")!];
    expect(plain).not.toContain("inches");
    expect(both).toMatch(/\| string\.length \| 328 \| mm \| 12 29\/32 in \(-0\.18\) \|/);
    expect(both).toMatch(/\| bridge\.tilt \| 2 \| deg \| {2}\|/);
    expect(plain).toContain("## Nut\n\nPictures: [outlines/nut.svg](outlines/nut.svg)\n");
    expect(sampleText("shops", "samphire.yaml")).not.toContain("units:");
  });
});

describe("dimensions.csv", () => {
  const read = (text: string) =>
    JSON.parse(
      execFileSync("python3", ["-c", "import csv,json,sys; print(json.dumps(list(csv.reader(sys.stdin))))"], {
        input: text,
        encoding: "utf8",
      }),
    ) as string[][];

  it("reads back to the report's numbers by another program, with inches where the shop asks", () => {
    const [head, ...rows] = read(files(spec).get("dimensions.csv")!);
    expect(head).toEqual(["dimension", "value", "unit", "tolerance", "part", "what it is"]);
    expect(
      rows.map(([id, value, unit, tolerance, part, label]) => ({
        id,
        label,
        value: Number(value),
        unit,
        tolerance: Number(tolerance),
        part,
      })),
    ).toEqual(report.dimensions);
    const [inches, ...lines] = read(files(inch).get("dimensions.csv")!);
    expect(inches!.slice(6)).toEqual(["inches", "off by mm"]);
    for (const line of lines) expect(line[6] !== "").toBe(line[2] === "mm");
  });
});
