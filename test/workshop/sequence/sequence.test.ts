import { describe, expect, it } from "vitest";
import { filedOf } from "../../../src/drawing/sheet/bench/filed-of.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { type Model, modelOf } from "../../../src/workshop/model.ts";
import { workSequence } from "../../../src/workshop/sequence/sequence.ts";
import type { WorkStep } from "../../../src/workshop/sequence/work-step.ts";
import { everyCount, frettedSpec, specOf } from "../../samples.ts";
import { type AtMachine, sequenceFaults } from "./sequence-faults.ts";

const modelFor = (design: string, count: number) => modelOf(specOf(design, count), memoryStore());

function machinesOf(model: Model): AtMachine[] {
  const [plan, side] = model.sawing.sequence;
  return [
    ...model.fixtures().map(({ file, thickness }) => ({ file, cut: null, thickness })),
    ...model.insides().map(({ file }) => ({ file, cut: null, thickness: null })),
    { file: "neck-saw-plan", cut: "plan", thickness: plan.work },
    { file: "neck-saw-side", cut: "side", thickness: side.work },
    ...model
      .partSawing()
      .flatMap(({ file, planed, sequence }) => sequence.map(({ cut }) => ({ file, cut, thickness: planed }))),
  ];
}

function faultsOf(model: Model, steps: readonly WorkStep[]): string[] {
  return sequenceFaults(steps, filedOf(model), machinesOf(model));
}

describe("the sequence of work", () => {
  it.each(everyCount)(
    "of $design with $count strings waits for nothing later and uses every file",
    ({ design, count }) => {
      const model = modelFor(design, count);
      expect(faultsOf(model, workSequence(model, filedOf(model)))).toEqual([]);
    },
  );

  it("of a fretted board saws slots while its edges are parallel, and sets frets when the neck is carved", () => {
    const model = modelOf(frettedSpec(5), memoryStore());
    const steps = workSequence(model, filedOf(model));
    expect(faultsOf(model, steps)).toEqual([]);
    const at = (id: string) => steps.findIndex((step) => step.id === id);
    expect(at("fingerboard.saw-side")).toBeGreaterThan(at("fingerboard.slots"));
    expect(at("fingerboard.slots")).toBeGreaterThan(at("fingerboard.plane"));
    expect(at("board.glue")).toBeGreaterThan(at("fingerboard.radius"));
    expect(at("frets.set")).toBeGreaterThan(at("neck.carve"));
  });

  it("of a through-neck goes as the trade has it: pins, plan while the back is flat, side, head, core, joints, recesses", () => {
    const model = modelFor("sedge", 5);
    const ids = workSequence(model, filedOf(model)).map(({ id }) => id);
    const order = [
      ...["neck.plane", "neck.pins", "neck.saw-plan", "neck.saw-side", "neck.head", "neck.core"],
      ...["neck.joints", "neck.recesses", "wings.dry-fit", "board.glue", "neck.carve", "finish.coat"],
    ];
    expect(ids.filter((id) => order.includes(id))).toEqual(order);
  });

  it("cuts a board's sides while the waste with its pins is on, and both edges of what is turned over", () => {
    const model = modelFor("bulrush", 4);
    const steps = workSequence(model, filedOf(model));
    const at = (id: string) => steps.findIndex((step) => step.id === id);
    expect(at("fingerboard.saw-end")).toBeGreaterThan(at("fingerboard-router.cut-back"));
    const twice = steps.filter(({ setUp }) => setUp?.kind === "fixture" && setUp.file === "neck-shaper");
    expect(twice.map(({ datum, setUp }) => [datum, setUp!.up])).toEqual([
      ["back", "front"],
      ["front", "back"],
    ]);
  });

  it("is plain data, the same each time", () => {
    const model = modelFor("mallow", 5);
    const steps = workSequence(model, filedOf(model));
    expect(JSON.parse(JSON.stringify(steps))).toEqual(steps);
    expect(workSequence(modelFor("mallow", 5), filedOf(model))).toEqual(steps);
  });
});

describe("a sequence that is wrong", () => {
  const model = modelFor("sedge", 5);
  const steps = workSequence(model, filedOf(model));
  const changed = (id: string, change: Partial<WorkStep>) =>
    steps.map((step) => (step.id === id ? { ...step, ...change } : step));

  it.each<[string, () => readonly WorkStep[], RegExp]>([
    ["wings glued before they are fitted", () => [...steps].reverse(), /before/],
    [
      "a cutter too short for the wood",
      () => changed("wing-bass-router.cut", { thickness: 20 }),
      /as thick as 20/,
    ],
    [
      "a fixture that no step is at",
      () => steps.filter(({ id }) => id !== "wing-treble-router.cut"),
      /no step at wing-treble-router/,
    ],
    ["a drawing that isn't there", () => changed("neck.head", { files: ["head-side"] }), /names head-side/],
    ["a drawing that nobody uses", () => changed("neck.head", { files: [] }), /nobody uses head-face/],
    [
      "a step that nobody waits for",
      () => changed("board.glue", { needs: [{ from: "stock", what: "nothing" }] }),
      /nobody waits for fingerboard.dots/,
    ],
  ])("is told: %s", (_, plant, fault) => {
    expect(faultsOf(model, plant()).some((one) => fault.test(one))).toBe(true);
  });
});
