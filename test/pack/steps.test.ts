import { expect, it } from "vitest";
import type { Options } from "../../src/order/resolve.ts";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { packOf } from "../../src/pack/pack.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { stepKey } from "../../src/step/step-key.ts";
import { memoryStore, type Store } from "../../src/step/store.ts";
import { specOf } from "../samples.ts";

const edits: readonly (readonly [string, Options])[] = [
  ["one more string", { strings: "6" }],
  ["the other hand", { hand: "left" }],
  ["a shorter string", { set: [{ name: "string.length", text: "326 mm" }] }],
  ["a wider gap at the nut", { set: [{ name: "nut.gap", text: "4.6 mm" }] }],
  ["a wider bridge", { set: [{ name: "bridge.spread", text: "41 mm" }] }],
  ["a flatter board", { set: [{ name: "fingerboard.radius", text: "44 mm" }] }],
  ["a higher string at the board's end", { set: [{ name: "string.clearance.end.low", text: "5.8 mm" }] }],
  ["a steeper core", { set: [{ name: "core.slope", text: "4.8 deg" }] }],
  ["a lower tailpiece", { set: [{ name: "tailpiece.height", text: "15.6 mm" }] }],
  ["rounder corners", { set: [{ name: "fingerboard.corner", text: "3 mm" }] }],
];

/** A store that hears of nothing which `first` has answered before, and of everything else that runs. */
function after(first: Store, known: ReadonlySet<string>, onRun: (name: string) => void): Store {
  const second = memoryStore(onRun);
  return {
    answer: (step, input) => (known.has(stepKey(step, input)) ? first : second).answer(step, input),
  };
}

/** Which steps run again after each of ten edits of a five-string sedge; no other test says what a change costs. */
it("runs again, after each edit, just what rests on it", async () => {
  const solids = solidsHere(kernelOnce());
  const known = new Set<string>();
  let all = 0;
  const first = memoryStore(() => all++);
  const noted: Store = {
    answer: (step, input) => {
      const answer = first.answer(step, input);
      known.add(answer.key);
      return answer;
    },
  };
  await packOf(specOf("sedge", 5), { store: noted, solids });
  const lines: string[] = [];
  for (const [what, options] of edits) {
    let ran: string[] = [];
    const store = after(first, known, (name) => ran.push(name));
    await packOf(specOf("sedge", 5, "", options), { store, solids });
    lines.push(`${what} (${ran.length} of ${all}): ${ran.sort().join(" ")}`);
    if (what !== edits[0]![0]) continue;
    ran = [];
    await packOf(specOf("sedge", 5, "", options), { store, solids });
    expect(ran, "the same again").toEqual([]);
  }
  expect(known.size).toBe(all);
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("steps.golden.txt");
});
