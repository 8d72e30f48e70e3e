import type { Filed, WorkStep } from "../../../src/workshop/sequence/work-step.ts";

/** What the machines really do at a set-up: the file, which of its cuts, and the thickness that the cutter or the blade goes through, mm; null where it goes through none. */
export type AtMachine = {
  readonly file: string;
  readonly cut: string | null;
  readonly thickness: number | null;
};

/** Everything that is wrong with a sequence of work, in words: found by walking it, with nothing of what made it. */
export function sequenceFaults(
  steps: readonly WorkStep[],
  filed: readonly Filed[],
  machines: readonly AtMachine[],
): string[] {
  const faults: string[] = [];
  const done = new Set<string>(["stock", "bought"]);
  const used = new Set<string>();
  for (const { id, needs, files, setUp, thickness } of steps) {
    if (done.has(id)) faults.push(`${id} twice`);
    for (const { from } of needs) if (!done.has(from)) faults.push(`${id} before ${from}`);
    if (needs.length === 0) faults.push(`${id} comes from nowhere`);
    done.add(id);
    for (const file of files) {
      used.add(file);
      if (!filed.some(({ name }) => name === file)) faults.push(`${id} names ${file}`);
    }
    if (setUp === null) continue;
    const real = machines.find((one) => isAt(setUp, one));
    if (real === undefined) faults.push(`${id} at no machine`);
    else if (Math.abs((thickness ?? -1) - (real.thickness ?? -1)) > 1e-6)
      faults.push(`${id} as thick as ${thickness}`);
    if (!files.includes(setUp.file)) faults.push(`${id} without ${setUp.file}`);
  }
  for (const one of machines)
    if (!steps.some(({ setUp }) => setUp !== null && isAt(setUp, one)))
      faults.push(`no step at ${one.file}${one.cut === null ? "" : `, ${one.cut}`}`);
  for (const { name } of filed) if (!used.has(name)) faults.push(`nobody uses ${name}`);
  const waited = new Set(steps.flatMap(({ needs }) => needs.map(({ from }) => from)));
  for (const { id } of steps.slice(0, -1)) if (!waited.has(id)) faults.push(`nobody waits for ${id}`);
  return faults;
}

function isAt(setUp: NonNullable<WorkStep["setUp"]>, { file, cut }: AtMachine): boolean {
  return setUp.file === file && (setUp.kind === "saw" ? setUp.cut : null) === cut;
}
