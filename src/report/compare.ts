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

/**
 * A check that answers differently, or that only one of the reports looked at. `overruled` holds the reasons of whoever overruled its refusals; `reason` is a refusal that is
 * overruled before and after, for another reason.
 */
export type MovedCheck = {
  readonly id: string;
  readonly kind: "worse" | "better" | "reason" | "new" | "gone" | "not-looked-at";
  readonly before: ReportedCheck["status"] | null;
  readonly after: ReportedCheck["status"] | null;
  readonly overruled: { readonly before: string | null; readonly after: string | null };
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
 * it got worse, is gone, or is new and doesn't pass; one that a report says was not looked at for it is told, but doesn't count. From best to worst a check passes, asks to be attended to, refuses but is overruled, and
 * refuses; another reason for overruling is said, but doesn't count. `head` names what the reports are of where that differs: it is said, but doesn't count
 * by itself.
 */
export function compareReports(before: Report, after: Report): Comparison {
  const dimensions = pairs(before.dimensions, after.dimensions).flatMap(([a, b]) => movedDimension(a, b));
  const skipped = [...(before.notLookedAt ?? []), ...(after.notLookedAt ?? [])];
  const checks = pairs(before.checks, after.checks).flatMap(([a, b]) => movedCheck(a, b, skipped));
  const counts = checks.some(
    ({ kind, after: now }) => kind === "worse" || kind === "gone" || (kind === "new" && now !== "pass"),
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

/** How grave an answer is. A refusal that a person overruled is graver than any check that doesn't refuse. */
function gravity({ status, overruled }: ReportedCheck): number {
  if (status !== "refuse") return { pass: 0, attend: 1 }[status];
  return overruled === undefined ? 3 : 2;
}

function movedCheck(
  a: ReportedCheck | undefined,
  b: ReportedCheck | undefined,
  skipped: readonly string[],
): MovedCheck[] {
  const both = {
    ...{ id: (a ?? b)!.id, before: a?.status ?? null, after: b?.status ?? null },
    overruled: { before: a?.overruled ?? null, after: b?.overruled ?? null },
  };
  if ((a === undefined || b === undefined) && skipped.includes(both.id))
    return [{ ...both, kind: "not-looked-at" }];
  if (a === undefined || b === undefined) return [{ ...both, kind: a === undefined ? "new" : "gone" }];
  const by = gravity(b) - gravity(a);
  if (by !== 0) return [{ ...both, kind: by > 0 ? "worse" : "better" }];
  return a.overruled === b.overruled ? [] : [{ ...both, kind: "reason" }];
}
