import { expect, it } from "vitest";
import type { Options } from "../../src/order/resolve.ts";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { packOf } from "../../src/pack/pack.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { noCopies, plainCopy } from "../../src/step/plain.ts";
import type { Step } from "../../src/step/step.ts";
import { keyText } from "../../src/step/step-key.ts";
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

const copies = noCopies();
/** What a step's key is taken from. */
function textOf<In, Out>(step: Step<In, Out>, input: In): string {
  return keyText(step, plainCopy(input, copies).text);
}

/** A store that hears of nothing which `first` has answered before, and of everything else that runs. */
function after(first: Store, known: ReadonlySet<string>, onRun: (name: string) => void): Store {
  const second = memoryStore(onRun);
  return {
    answer: (step, input) => (known.has(textOf(step, input)) ? first : second).answer(step, input),
  };
}

/** Which steps run again after each of ten edits of a five-string sedge; no other test says what a change costs. */
it("runs again, after each edit, just what rests on it", async () => {
  const [solids, kept] = [solidsHere(kernelOnce()), new Map()];
  const known = new Set<string>();
  let all = 0;
  const first = memoryStore(() => all++);
  const noted: Store = {
    answer: (step, input) => {
      const answer = first.answer(step, input);
      known.add(textOf(step, input));
      return answer;
    },
  };
  await packOf(specOf("sedge", 5), { store: noted, solids, kept });
  const lines: string[] = [];
  for (const [what, options] of edits) {
    let ran: string[] = [];
    const store = after(first, known, (name) => ran.push(name));
    await packOf(specOf("sedge", 5, "", options), { store, solids, kept });
    lines.push(`${what} (${ran.length} of ${all}): ${ran.sort().join(" ")}`);
    if (what !== edits[0]![0]) continue;
    ran = [];
    await packOf(specOf("sedge", 5, "", options), { store, solids, kept });
    expect(ran, "the same again").toEqual([]);
  }
  expect(known.size).toBe(all);
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("steps.golden.txt");
});
