import { makeFolder } from "../files/make-folder.ts";
import { freeOrPack, publish } from "../files/publish.ts";
import { didYouMean } from "../order/nearest.ts";
import { type Checked, commandLine, type Problem } from "../order/problem.ts";
import { keptReadings } from "../order/readings.ts";
import type { Options } from "../order/resolve.ts";
import type { Spec } from "../order/spec.ts";
import type { Store } from "../step/store.ts";
import { kernelOnce } from "./kernel-once.ts";
import { loadOrder } from "./load.ts";
import { type Held, type Pack, packOf, partNames } from "./pack.ts";
import type { Solids } from "./solids/solid-tasks.ts";
import { solidsHere } from "./solids/solids-here.ts";

/** What to make and where. */
export type Job = {
  readonly orders: readonly string[];
  readonly out: string;
  readonly only: readonly string[];
  readonly options: Options;
  /** Hears how far the job is, for a progress line. */
  readonly onPack?: (done: number, of: number) => void;
};

/** A pack that was published. */
export type Made = {
  readonly order: string;
  readonly folder: string;
  readonly fingerprint: string;
  readonly files: number;
  readonly held: readonly Held[];
  readonly checks: { readonly pass: number; readonly attend: number; readonly refuse: number };
  readonly attend: readonly { readonly id: string; readonly why: string }[];
  /** Refusals that the order overrules, each with the reason given there. */
  readonly overruled: readonly { readonly id: string; readonly why: string; readonly reason: string }[];
};

/**
 * Make the packs of many orders. Nothing is written unless every order can be built: one order's problems stop all, so that a
 * set of packs is never half of one day and half of another. `solids` does what is asked of the solid kernel; in this thread if it is left out.
 */
export async function makePacks(
  job: Job,
  store: Store,
  solids: Solids = solidsHere(kernelOnce()),
): Promise<Checked<Made[]>> {
  const readings = keptReadings();
  const loaded = job.orders.map((file) => loadOrder(file, store, job.options, readings));
  const problems = [...unknownParts(job.only), ...loaded.flatMap((spec) => (spec.ok ? [] : spec.problems))];
  const specs = loaded.flatMap((spec) => (spec.ok ? [spec.value] : []));
  problems.push(...sameId(specs, job.orders));
  if (problems.length > 0) return { ok: false, problems };
  const variant = isVariant(job);
  const only = job.only.length === 0 ? "all" : job.only;
  // What is in the way is told before anything is made; a variant's own place is known only by its fingerprint.
  for (const { order } of specs) await (variant ? makeFolder(job.out) : freeOrPack(job.out, order));
  const packs: Pack[] = [];
  for (const spec of specs) {
    packs.push(await packOf(spec, { store, solids, only }));
    job.onPack?.(packs.length, specs.length);
  }
  const named = packs.map((pack) => ({ pack, name: folderName(pack, variant) }));
  for (const { name } of named) await freeOrPack(job.out, name);
  const made: Made[] = [];
  for (const { pack, name } of named) {
    const folder = await publish(job.out, name, pack.files);
    made.push(summary(pack, folder));
  }
  return { ok: true, value: made };
}

/** A variant made by options lies beside the order's own pack, under the order's name and a piece of its fingerprint. */
function folderName({ report: { order, fingerprint } }: Pack, variant: boolean): string {
  return variant ? `${order}~${fingerprint.slice(0, 6)}` : order;
}

function isVariant({ only, options: { strings, hand, set = [] } }: Job): boolean {
  return only.length > 0 || strings !== undefined || hand !== undefined || set.length > 0;
}

function summary({ report, files, held }: Pack, folder: string): Made {
  const count = (status: string) => report.checks.filter((check) => check.status === status).length;
  return {
    ...{ order: report.order, folder, fingerprint: report.fingerprint, files: files.length, held },
    checks: { pass: count("pass"), attend: count("attend"), refuse: count("refuse") },
    attend: report.checks.filter(({ status }) => status === "attend").map(({ id, why }) => ({ id, why })),
    overruled: report.checks.flatMap(({ id, why, overruled }) =>
      overruled === undefined ? [] : [{ id, why, reason: overruled }],
    ),
  };
}

function unknownParts(only: readonly string[]): Problem[] {
  return only
    .filter((part) => !partNames.includes(part))
    .map((part) => ({
      ...{ code: "unknown-name", position: { file: commandLine, line: 1, column: 1 }, name: "only" },
      ...{ found: JSON.stringify(part), allowed: partNames.join(", "), hint: didYouMean(part, partNames) },
    }));
}

function sameId(specs: readonly Spec[], files: readonly string[]): Problem[] {
  const lower = specs.map(({ order }) => order.toLowerCase());
  return specs.flatMap(({ order }, i): Problem[] => {
    const first = lower.indexOf(lower[i]!);
    if (first === i || specs.length !== files.length) return [];
    return [
      {
        ...{ code: "id", position: { file: files[i]!, line: 1, column: 1 }, name: "order" },
        ...{ found: `${order}, which ${files[first]} has too`, allowed: "one order to a number" },
        hint: "give one of them another number, or make them one at a time",
      },
    ];
  });
}
