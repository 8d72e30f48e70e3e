import type { Spec } from "../../order/spec.ts";
import { inchesText } from "../../report/inches.ts";
import { readable } from "../../report/markdown.ts";
import type { Report, ReportedCheck } from "../../report/report.ts";
import { byGravity, type Picture, sourceOf } from "../../report/report-markdown.ts";
import { escaped } from "../svg/svg-data.ts";
import { contentsStyle } from "./contents-style.ts";

/** What a contents page tells of. */
export type Contents = {
  readonly report: Report;
  readonly spec: Spec;
  readonly held: readonly { readonly file: string; readonly check: string; readonly why: string }[];
  readonly pictures: readonly Picture[];
  /** Every other file of the pack but the manifest, sorted by path. */
  readonly files: readonly { readonly path: string; readonly what: string; readonly bytes: number }[];
};

/**
 * The page that opens a pack from disk: checks by gravity, pictures, numbers by part, and every file. It refers to nothing but files of its own pack,
 * needs no script, and reads on a phone and on paper.
 */
export function contentsPage(contents: Contents): string {
  const { report, spec, held } = contents;
  const { order, design, strings, hand, fingerprint, checks } = report;
  const revision = spec.revision === null ? "" : `, revision ${spec.revision}`;
  const about = `Design ${design}: ${spec.title}. ${strings} strings (${spec.strings.map(({ name }) => name).join(" ")}), ${hand} hand${revision}. Fingerprint ${fingerprint}.`;
  const sections = [
    section("checks", "Checks", [countsOf(report), ...heldBack(held), checksTable(checks)].join("\n")),
    section("bench", "For the bench", benchOf(contents)),
    section("pictures", "Pictures", picturesOf(contents.pictures)),
    section("numbers", "Numbers", numbersOf(contents)),
    section("files", "Files", filesOf(contents)),
  ];
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(order)}</title>
<style>
${contentsStyle}</style>
</head>
<body>
<header>
<h1>${escaped(order)}</h1>
<p>${escaped(about)}</p>
<p class="caution"><strong>Machines can maim.</strong> Nothing here says that a cut or a set-up is without danger: local codes, the machine's manual and a competent person come first.</p>
<nav><a href="#checks">Checks</a> <a href="#bench">For the bench</a> <a href="#pictures">Pictures</a> <a href="#numbers">Numbers</a> <a href="#files">Files</a></nav>
</header>
<main>
${sections.join("\n")}
</main>
</body>
</html>
`;
}

function section(id: string, heading: string, body: string): string {
  return `<section id="${id}">\n<h2>${heading}</h2>\n${body}\n</section>`;
}

function countsOf({ checks, notLookedAt = [] }: Report): string {
  const count = (status: string) => checks.filter((check) => check.status === status).length;
  const not = notLookedAt.length === 0 ? "" : ` Not looked at: ${escaped(notLookedAt.join(", "))}.`;
  return `<p>${count("refuse")} refuse, ${count("attend")} ask to be attended to, ${count("pass")} pass.${not}</p>`;
}

function heldBack(held: Contents["held"]): string[] {
  if (held.length === 0) return [];
  const lines = held.map(
    ({ file, check, why }) =>
      `<li><strong>${escaped(file)}</strong>: ${escaped(check)} refuses: ${escaped(why)}</li>`,
  );
  return [`<p>Held back, because a check refuses:</p>\n<ul>\n${lines.join("\n")}\n</ul>`];
}

function checksTable(checks: readonly ReportedCheck[]): string {
  const rows = byGravity(checks).map(({ id, status, stake, found, limit, unit, why, source, overruled }) => {
    const answer = overruled === undefined ? status : `${status}, overruled: ${overruled}`;
    const numbers = `${readable(found)} ${unit}`.trimEnd();
    return row(
      [
        escaped(answer),
        escaped(id),
        stake,
        numbers,
        `${readable(limit)} ${unit}`.trimEnd(),
        `${escaped(why)}<small>${escaped(source)}</small>`,
      ],
      ["", "check", "at stake", "found", "limit", "why"],
      overruled === undefined ? status : "refuse",
    );
  });
  return table(["Answer", "Check", "At stake", "Found", "Limit", "Why"], rows);
}

/** What is printed and goes to the bench with the work, the traveller first. */
function benchOf({ files }: Contents): string {
  const printed = files.filter(({ path }) => path.startsWith("bench/") && path.endsWith(".pdf"));
  const first = (path: string) => (path === "bench/traveller.pdf" ? 0 : 1);
  const rows = printed
    .toSorted((a, b) => first(a.path) - first(b.path))
    .map(({ path, what }) => row([`<a href="${link(path)}">${escaped(path)}</a>`, escaped(what)], ["", ""]));
  return rows.length === 0 ? "<p>Nothing.</p>" : table(["File", "What it is"], rows);
}

function picturesOf(pictures: readonly Picture[]): string {
  const figures = pictures.map(({ path, what }) => {
    const said = what.replace(/^picture: /, "");
    return `<figure><a href="${link(path)}"><img src="${link(path)}" alt="${escaped(said)}"></a><figcaption>${escaped(path)}: ${escaped(said)}</figcaption></figure>`;
  });
  return pictures.length === 0 ? "<p>None.</p>" : `<div class="pictures">\n${figures.join("\n")}\n</div>`;
}

function numbersOf({ report, spec }: Contents): string {
  const parts = [...new Set(report.dimensions.map(({ part }) => part))].sort();
  const inch = spec.shop.units === "inch";
  const head = [
    "Dimension",
    "Value",
    ...(inch ? ["Inches (off by mm)"] : []),
    "Tolerance",
    "From",
    "What it is",
  ];
  const labels = ["", "value", ...(inch ? ["inches (off by mm)"] : []), "tolerance", "from", ""];
  return parts
    .map((part) => {
      const rows = report.dimensions
        .filter((dimension) => dimension.part === part)
        .map(({ id, value, unit, tolerance, label }) => {
          const inches = inch ? [unit === "mm" ? inchesText(value) : ""] : [];
          const number = `${readable(value)} ${unit}`.trimEnd();
          return row(
            [
              escaped(id),
              number,
              ...inches,
              readable(tolerance),
              escaped(sourceOf(spec, id)),
              escaped(label),
            ],
            labels,
          );
        });
      return `<h3>${escaped(part)}</h3>\n${table(head, rows)}`;
    })
    .join("\n");
}

function filesOf({ files }: Contents): string {
  const rows = files.map(({ path, what, bytes }) =>
    row(
      [`<a href="${link(path)}">${escaped(path)}</a>`, `${Math.ceil(bytes / 1024)} kB`, escaped(what)],
      ["", "size", ""],
    ),
  );
  const note =
    '<p>The <a href="manifest.json">manifest</a> has every file with its bytes, SHA-256, fingerprint and what reading it back found.</p>';
  return `${note}\n${table(["File", "Size", "What it is"], rows)}`;
}

function table(head: readonly string[], rows: readonly string[]): string {
  const cells = head.map((name) => `<th scope="col">${name}</th>`).join("");
  return `<table>\n<thead><tr>${cells}</tr></thead>\n<tbody>\n${rows.join("\n")}\n</tbody>\n</table>`;
}

/** A row of cells in HTML; each cell's label stands before it where there is no room for columns. */
function row(cells: readonly string[], labels: readonly string[], status = ""): string {
  const inside = cells.map((cell, i) => {
    const label = labels[i] === "" ? "" : ` data-label="${labels[i]}"`;
    return `<td${label}>${cell}</td>`;
  });
  return `<tr${status === "" ? "" : ` class="${status}"`}>${inside.join("")}</tr>`;
}

/** A path of the pack as a link to it. */
function link(path: string): string {
  return path.split("/").map(encodeURIComponent).join("/");
}
