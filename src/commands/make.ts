import { InputError } from "../order/problem.ts";
import { type Made, makePacks } from "../pack/make.ts";
import { solidsAside } from "../pack/solids/solids-aside.ts";
import { memoryStore } from "../step/store.ts";
import type { Common, Console } from "./console.ts";
import { type Variant, variantOptions } from "./options.ts";
import { exit, run } from "./run.ts";

/** What `patternloft make` is given; each of `only` is a part's name or several with commas between them. */
export type MakeGiven = Common &
  Variant & { readonly orders: readonly string[]; readonly out: string; readonly only: readonly string[] };

/** Make the packs of orders: exit 1 when a check holds a file back. */
export function make(given: MakeGiven): Promise<void> {
  return run(
    given,
    async (console) => {
      const { orders, out } = given;
      const only = given.only.flatMap((names) => names.split(",").map((name) => name.trim()));
      const onPack = (done: number, of: number) => console.progress(`${done} of ${of} packs`);
      const { solids, end } = solidsAside(new URL("./solid-worker.js", import.meta.url));
      const job = { orders, out, only, options: variantOptions(given), onPack };
      const made = await makePacks(job, memoryStore(), solids).finally(end);
      console.progress("");
      if (!made.ok) throw new InputError(made.problems);
      if (console.json) console.print(`${JSON.stringify({ packs: made.value }, undefined, 2)}\n`);
      for (const pack of made.value) tell(console, pack);
      return made.value.some(({ held }) => held.length > 0) ? exit.differs : exit.done;
    },
    "out",
  );
}

function tell({ say, colour }: Console, made: Made): void {
  const { order, folder, files, held, checks, attend, overruled } = made;
  const numbers = `${files} files; checks: ${checks.pass} pass, ${checks.attend} attend, ${checks.refuse} refuse`;
  say(`${colour.bold(order)}  ${folder}  ${numbers}`);
  for (const { id, why } of attend) say(`  ${colour.yellow("attend")} ${id}: ${why}`);
  for (const { id, why, reason } of overruled)
    say(`  ${colour.red(`refuse, overruled: ${reason};`)} ${id}: ${why}`);
  for (const { file, check, why } of held)
    say(`  ${colour.red("held back")} ${file}: ${check} refuses: ${why}`);
}
