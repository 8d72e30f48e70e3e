import type { Finding } from "../checks/check.ts";
import { fingerprintOf, hashOf } from "../step/key.ts";
import { rounded } from "../step/rounded.ts";
import type { Model } from "../workshop/model.ts";
import { dimensionsOf } from "./dimensions.ts";

/** One number of a report; `tolerance` is how far it may move before a comparison counts it. */
export type ReportedDimension = {
  readonly id: string;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  readonly tolerance: number;
  readonly part: string;
};

/** A check's finding as a report has it. */
export type ReportedCheck = Omit<Finding, "holds">;

/** The dimension report of one order, as dimensions.json holds it. */
export type Report = {
  readonly order: string;
  readonly design: string;
  readonly strings: number;
  readonly hand: "right" | "left";
  readonly fingerprint: string;
  readonly dimensions: readonly ReportedDimension[];
  readonly checks: readonly ReportedCheck[];
  /** The checks that nobody looked at for this report, since they need the assembled solids; left out where there are none. */
  readonly notLookedAt?: readonly string[];
};

/** What a report is asked for: parts to keep to, or all of them, and what it leaves out. */
export type Asked = {
  readonly parts: readonly string[] | "all";
  /** The checks that were not looked at. */
  readonly notLookedAt: readonly string[];
};

/**
 * The report of a model: its numbers rounded to 1e-6 and sorted by id, and what the checks found.
 *
 * `found` is what the checks found in this model. `parts` are the fingerprints of the order's parts by file name; the order's own is the hash over them and over its numbers, so
 * that two variants that differ in a number alone don't share a folder.
 */
export function reportOf(
  model: Model,
  found: readonly Finding[],
  parts: ReadonlyMap<string, string>,
  { parts: kept, notLookedAt }: Asked,
): Report {
  const { spec } = model;
  const wanted = (part: string) => kept === "all" || kept.includes(part);
  const dimensions = dimensionsOf(spec)
    .filter(({ part }) => wanted(part))
    .map((entry): ReportedDimension => {
      const { id, label, unit, tolerance, part } = entry;
      return { id, label, value: rounded(entry.of(model)), unit, tolerance, part };
    })
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  return {
    ...{ order: spec.order, design: spec.design, strings: spec.count, hand: spec.hand },
    ...{ fingerprint: orderFingerprint(parts, dimensions), dimensions },
    checks: found
      .filter(({ subject }) => wanted(subject))
      .map(({ holds: _, ...finding }) => finding)
      .map((finding) => ({ ...finding, found: rounded(finding.found), limit: rounded(finding.limit) })),
    ...(notLookedAt.length > 0 ? { notLookedAt } : {}),
  };
}

function orderFingerprint(
  parts: ReadonlyMap<string, string>,
  dimensions: readonly ReportedDimension[],
): string {
  const lines = [
    ...[...parts].map(([name, fingerprint]) => `${name} ${fingerprint}`).sort(),
    ...dimensions.map(({ id, value }) => `${id} ${value}`),
  ];
  return fingerprintOf(hashOf(lines.join("\n")));
}
