import type { Compared } from "./junit.ts";
import { markdownTable, readable } from "./markdown.ts";

/** What moved in one order: a dimension or a check, with its values before and after as text. */
type Row = {
  readonly what: string;
  readonly order: string;
  readonly of: string;
  readonly before: string;
  readonly after: string;
  readonly judged: string;
};

/** What two sets of reports share, and what only one of them has, by name. */
export type ComparedSets = {
  readonly all: readonly Compared[];
  readonly fresh: readonly string[];
  readonly gone: readonly string[];
};

/** Whether two sets differ: an order that is gone, or one that moved beyond its tolerances. An order that is new doesn't count by itself. */
export function setsDiffer({ all, gone }: ComparedSets): boolean {
  return gone.length > 0 || all.some(({ comparison }) => comparison.differs);
}

/**
 * One table of what moved over all orders: sorted by what moved, then by order, so that a change that goes through designs, counts
 * and hands stands in one block.
 */
export function movedTable(sets: ComparedSets, format: "text" | "markdown"): string {
  const rows = sets.all
    .flatMap(rowsOf)
    .sort((a, b) => (a.what === b.what ? (a.order < b.order ? -1 : 1) : a.what < b.what ? -1 : 1));
  const head = ["what", "order", "of", "before", "after", "judged"];
  const cells = rows.map(({ what, order, of, before, after, judged }) => [
    what,
    order,
    of,
    before,
    after,
    judged,
  ]);
  const said = [
    verdict(sets),
    ...sets.fresh.map((name) => `${name}: new, nothing to compare it with`),
    ...sets.gone.map((name) => `${name}: gone`),
  ];
  if (format === "markdown") {
    const [first, ...rest] = said;
    const lines = [`**${first}**`, ...rest.map((line) => `- ${line}`)];
    return `${[...lines, ...(cells.length === 0 ? [] : [markdownTable(head, cells)])].join("\n\n")}\n`;
  }
  const widths = head.map((_, i) => Math.max(0, ...cells.map((row) => row[i]!.length)));
  const lines = cells.map((row) =>
    row
      .map((cell, i) => cell.padEnd(widths[i]!))
      .join("  ")
      .trimEnd(),
  );
  return `${[...lines, ...said.slice(1), said[0]].join("\n")}\n`;
}

function verdict(sets: ComparedSets): string {
  const moved = sets.all.filter(
    ({ comparison: { dimensions, checks } }) => dimensions.length + checks.length > 0,
  );
  const count = `${moved.length} of ${sets.all.length} orders moved`;
  return setsDiffer(sets)
    ? `${count}, differs beyond tolerance`
    : moved.length > 0
      ? `${count}, within tolerance`
      : "nothing moved";
}

function rowsOf({ name, after, comparison }: Compared): Row[] {
  const of = `${after.design} ${after.strings} ${after.hand}`;
  const number = (value: number | null) => (value === null ? "none" : readable(value));
  return [
    ...comparison.dimensions.map(({ id, kind, before, after: now, beyond, unit }): Row => {
      const judged = kind === "changed" ? (beyond ? "beyond" : "within") : kind;
      return {
        what: id,
        order: name,
        of,
        before: number(before),
        after: `${number(now)} ${unit}`.trimEnd(),
        judged,
      };
    }),
    ...comparison.checks.map(({ id, kind, before, after: now }): Row => {
      return {
        what: `check ${id}`,
        order: name,
        of,
        before: before ?? "none",
        after: now ?? "none",
        judged: kind,
      };
    }),
  ];
}
