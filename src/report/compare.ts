import type { Report, ReportedCheck, ReportedDimension } from "./report.ts";

/** A dimension that differs between two reports. `beyond` says whether it moved by more than the old report's tolerance. */
export type MovedDimension = {
  readonly id: string;
  readonly kind: "changed" | "new" | "gone";
  readonly before: number | null;
  readonly after: number | null;
  readonly unit: string;
  readonly tolerance: number;
  readonly beyond: boolean;
};

/** A check that answers differently. */
export type MovedCheck = {
  readonly id: string;
  readonly kind: "worse" | "better" | "new" | "gone";
  readonly before: ReportedCheck["status"] | null;
  readonly after: ReportedCheck["status"] | null;
};

/** All that differs between two reports; `differs` when any of it counts. */
export type Comparison = {
  readonly head: readonly string[];
  readonly dimensions: readonly MovedDimension[];
  readonly checks: readonly MovedCheck[];
  readonly differs: boolean;
};

/** Numbers are reported to a millionth; what differs by less than half of that is the same. */
const same = 5e-7;

/**
 * What moved from an old report to a new one, sorted by id.
 *
 * A dimension counts when it moved by more than the old report's tolerance for it, or is new or gone; a check counts when
 * it got worse, or is new and doesn't pass. `head` names what the reports are of where that differs: it is said, but doesn't count
 * by itself.
 */
export function compareReports(before: Report, after: Report): Comparison {
  const dimensions = pairs(before.dimensions, after.dimensions).flatMap(([a, b]) => movedDimension(a, b));
  const checks = pairs(before.checks, after.checks).flatMap(([a, b]) => movedCheck(a, b));
  const counts = checks.some(
    ({ kind, after: now }) => kind === "worse" || (kind === "new" && now !== "pass"),
  );
  return {
    head: (["order", "design", "strings", "hand"] as const)
      .filter((key) => before[key] !== after[key])
      .map((key) => `${key}: ${before[key]} before, ${after[key]} after`),
    ...{ dimensions, checks, differs: counts || dimensions.some(({ beyond }) => beyond) },
  };
}

function pairs<T extends { readonly id: string }>(
  before: readonly T[],
  after: readonly T[],
): [T | undefined, T | undefined][] {
  const [old, now] = [new Map(before.map((x) => [x.id, x])), new Map(after.map((x) => [x.id, x]))];
  return [...new Set([...old.keys(), ...now.keys()])].sort().map((id) => [old.get(id), now.get(id)]);
}

function movedDimension(
  a: ReportedDimension | undefined,
  b: ReportedDimension | undefined,
): MovedDimension[] {
  const { id, unit, tolerance } = (a ?? b)!;
  const numbers = { before: a?.value ?? null, after: b?.value ?? null };
  if (a === undefined || b === undefined) {
    return [{ id, kind: a === undefined ? "new" : "gone", ...numbers, unit, tolerance, beyond: true }];
  }
  const by = Math.abs(b.value - a.value);
  if (by < same && a.unit === b.unit) return [];
  return [
    { id, kind: "changed", ...numbers, unit, tolerance, beyond: by > tolerance + same || a.unit !== b.unit },
  ];
}

const gravity = { pass: 0, attend: 1, refuse: 2 } as const;

function movedCheck(a: ReportedCheck | undefined, b: ReportedCheck | undefined): MovedCheck[] {
  const statuses = { before: a?.status ?? null, after: b?.status ?? null };
  const { id } = (a ?? b)!;
  if (a === undefined || b === undefined)
    return [{ id, kind: a === undefined ? "new" : "gone", ...statuses }];
  if (a.status === b.status) return [];
  return [{ id, kind: gravity[b.status] > gravity[a.status] ? "worse" : "better", ...statuses }];
}
