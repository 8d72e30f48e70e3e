import { describe, expect, it } from "vitest";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { forced } from "../forced.ts";
import { everyCount, orderText, resolved, sampleText, specOf } from "../samples.ts";
import { screwed } from "./rest-parts.ts";

const store = memoryStore();
const made = (spec: Spec) => instrument(spec, store);
const told = (spec: Spec) => contradictions(spec, made(spec));
const sedge = specOf("sedge", 5);
const thrift = specOf("thrift", 5);
const bulrush = specOf("bulrush", 5);

describe("rests that can't be built", () => {
  it("are none of the designs' own", () => {
    for (const { design, count } of everyCount) expect(told(specOf(design, count))).toEqual([]);
  });

  it.each<[string, Spec, Record<string, number>, string, RegExp]>([
    [
      "a slot through the front",
      sedge,
      { "rest.shoulder.depth": 23 },
      "rest.shoulder.depth",
      /front: they overlap/,
    ],
    ["a slot out of the edge", sedge, { "rest.shoulder.travel": 120 }, "rest.shoulder.travel", /edge/],
    [
      "a mount through a pin",
      sedge,
      { "rest.shoulder.travel": 0, "rest.shoulder.hole": 70 },
      "rest.shoulder.hole",
      /overlap/,
    ],
    [
      "a chin rest over the edge",
      sedge,
      { "rest.chin.out": 50 },
      "rest.chin.out",
      /past the flat of the wing-bass, over the wing's edge/,
    ],
    ["a chin rest over the joint", sedge, { "rest.chin.out": 10 }, "rest.chin.out", /over the joint/],
    [
      "a chin rest over the core's room",
      thrift,
      { "rest.chin.out": -30 },
      "rest.chin.out",
      /past the flat of the body/,
    ],
    [
      "screws through a wire's bore",
      screwed,
      { "rest.chin.screw.depth": 12 },
      "rest.chin.screw.depth",
      /the chin rest's screw [ab] and the bore/,
    ],
    [
      "a bore out of the front",
      bulrush,
      { "endpin.down": 8 },
      "endpin.down",
      /endpin's bore and the core's front/,
    ],
    [
      "a bore out of the back",
      bulrush,
      { "endpin.angle": -20 },
      "endpin.angle",
      /endpin's bore and the core's back/,
    ],
    [
      "a bore into the lower pin",
      bulrush,
      { "endpin.depth": 700, "endpin.angle": 1 },
      "endpin.depth",
      /endpin's bore and/,
    ],
  ])("%s", (_, spec, values, name, found) => {
    const problems = told(forced(spec, values));
    expect(problems.map(({ found: said }) => said).join("; ")).toMatch(found);
    for (const problem of problems) {
      expect(problem).toMatchObject({ code: "contradiction", name });
      expect(problem.hint).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  it("with what is told to move can be built", () => {
    for (const [spec, values] of [
      [sedge, { "rest.shoulder.depth": 23 }],
      [bulrush, { "endpin.down": 9 }],
    ] as const) {
      const [problem] = told(forced(spec, values));
      const [, id, to] = /(?:raise|lower) ([a-z.]+) to (-?[\d.]+) mm/.exec(problem!.hint)!;
      expect(told(forced(spec, { ...values, [id!]: Number(to) }))).toEqual([]);
    }
  });

  it("are told in the design where a part, a voice or a name is wrong", () => {
    const wrong = (design: string, from: string, to: string) => {
      const text = sampleText("designs", `${design}.yaml`);
      expect(text).toContain(from);
      const spec = resolved(orderText(design, 5), {}, { designs: { [design]: text.replace(from, to) } });
      return spec.ok ? told(spec.value) : spec.problems;
    };
    expect(wrong("sedge", "in: wing-treble, at", "in: body, at")[0]).toMatchObject({
      ...{ code: "contradiction", name: "rest.shoulder.treble", allowed: "neck, wing-bass, wing-treble" },
    });
    expect(wrong("thrift", "    on: body", "    on: wing-bass")[0]).toMatchObject({ name: "rest.chin" });
    expect(wrong("sedge", "voice: violin", "voice: cello").map(({ name }) => name)).toContain("rests.chin");
    expect(wrong("bulrush", "voice: cello", "voice: violin").map(({ name }) => name)).toContain(
      "rests.endpin",
    );
    expect(wrong("sedge", "{ id: treble, in: wing-treble", "{ id: bass, in: wing-treble")[0]).toMatchObject({
      ...{ code: "id", name: "rest.shoulder.bass" },
    });
    expect(
      wrong(
        "sedge",
        "{ id: outer, to: [0, 1], corner: 8 mm }",
        "{ id: outer, to: [0, 1], corner: 40 mm }",
      )[0],
    ).toMatchObject({
      found: expect.stringContaining("edge outer can't be made"),
    });
    const [mount] = wrong(
      "sedge",
      "in: wing-bass, at: [0.885, 0.44], turn",
      "in: wing-bass, at: [0.885, 0.98], turn",
    );
    expect(mount).toMatchObject({
      name: "rest.shoulder.hole",
      hint: expect.stringContaining("move the shoulder mount bass"),
    });
    expect(mount!.position.file).toBe("sedge.yaml");
  });
});
