import { describe, expect, it } from "vitest";
import { contradictions } from "../../../src/instrument/contradictions.ts";
import { instrument } from "../../../src/instrument/instrument.ts";
import type { Spec } from "../../../src/order/spec.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { forced } from "../../forced.ts";
import { everyCount, specOf } from "../../samples.ts";

const told = (spec: Spec) => contradictions(spec, instrument(spec, memoryStore()));
const sedge = specOf("sedge", 5);

describe("wings that can't be built", () => {
  it("are none of the designs' own", () => {
    for (const { design, count } of everyCount) expect(told(specOf(design, count))).toEqual([]);
  });

  it.each<[string, Record<string, number>, string, string]>([
    [
      "a joint before the core's sides",
      { "wing.bass.start": 5 },
      "wing.bass.start",
      "raise wing.bass.start by",
    ],
    [
      "a wing that runs past its core",
      { "wing.bass.start": 80 },
      "wing.bass.start",
      "lower wing.bass.length or",
    ],
    [
      "a strip out of the core's front",
      { "wing.treble.rake": 4 },
      "wing.treble.rake",
      "lower wing.treble.rake to 2.04",
    ],
    [
      "a strip over the core's front at its head",
      { "wing.bass.drop": -1 },
      "wing.bass.drop",
      "raise wing.bass.drop to 0",
    ],
    [
      "a strip out of the core's back",
      { "wing.bass.thickness": 40 },
      "wing.bass.thickness",
      "lower wing.bass.thickness to",
    ],
    [
      "a pin through the wing's front",
      { "wing.treble.cant": 30, "wing.treble.thickness": 20 },
      "wing.treble.cant",
      "lower wing.treble.pin.depth",
    ],
    [
      "a pin through the wing's edge",
      { "wing.bass.pin.depth": 40 },
      "wing.bass.pin.depth",
      "lower wing.bass.pin.depth",
    ],
    [
      "pins that meet in the core",
      { "wing.treble.pin.depth": 27 },
      "wing.treble.pin.depth",
      "lower wing.treble.pin.depth",
    ],
  ])("%s", (_, values, name, hint) => {
    const [problem] = told(forced(sedge, values));
    expect(problem).toMatchObject({ code: "contradiction", name, hint: expect.stringContaining(hint) });
  });

  it("with what is told to move can be built", () => {
    for (const [id, value] of [
      ["wing.treble.rake", 4],
      ["wing.bass.thickness", 40],
      ["wing.treble.pin.depth", 27],
    ] as const) {
      const [problem] = told(forced(sedge, { [id]: value }));
      const [, moved, to] = /(?:raise|lower) ([a-z.]+) to (-?[\d.]+)/.exec(problem!.hint)!;
      expect(told(forced(sedge, { [id]: value, [moved!]: Number(to) }))).toEqual([]);
    }
  });

  it("have no outline without a joint to begin with", () => {
    const wings = sedge.wings!;
    const edges = wings.bass.face.edges.map((edge) => ({ ...edge, joined: null }));
    const bare: Spec = {
      ...sedge,
      wings: { ...wings, bass: { ...wings.bass, face: { ...wings.bass.face, edges } } },
    };
    expect(told(bare)[0]).toMatchObject({ found: expect.stringContaining("doesn't begin with a joint") });
  });
});
