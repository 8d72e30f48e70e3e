import { describe, expect, it } from "vitest";
import { checks, findings } from "../../src/checks/checks.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced } from "../forced.ts";
import { everyCount, specOf } from "../samples.ts";

/** What one check finds; the others, which ask for much more, are not run. */
function found(spec: Spec, id: string) {
  const only = checks.filter((check) => check.id === id);
  expect(only).toHaveLength(1);
  return findings(modelOf(spec, memoryStore()), only)[0];
}

const [four, five] = [specOf("sedge", 4), specOf("sedge", 5)];
const saddled = specOf("mallow", 4);

/** A saddle held by screws as thin as a pin. */
const pinned: Spec = {
  ...saddled,
  bridgeFoot: { kind: "saddle", screws: [{ id: "a", at: [0, 0], size: 0.3 }] },
};

describe("the checks of the forces", () => {
  it.each<[string, Spec, Spec, string, string, RegExp]>([
    [
      "a bridge that tips to the nut",
      five,
      forced(five, { "bridge.tilt": 0 }),
      ...(["bridge.resultant", "attend", /toward the nut: raise bridge.tilt/] as const),
    ],
    [
      "a bridge that tips to the tail",
      five,
      forced(five, { "bridge.tilt": 5.5 }),
      ...(["bridge.resultant", "attend", /toward the tail: lower bridge.tilt/] as const),
    ],
    [
      "a bridge that falls over",
      five,
      forced(five, { "bridge.tilt": 9 }),
      ...(["bridge.resultant", "refuse", /toward the tail/] as const),
    ],
    [
      "a core that doesn't slope under a low tailpiece",
      four,
      forced(four, { "core.slope": 0, "tailpiece.height": 1, afterlength: 36 }),
      ...(["bridge.friction", "attend", /core.slope/] as const),
    ],
    ["screws as thin as a pin", saddled, pinned, "bridge.shear", "attend", /thicker/],
    [
      "a string that is too heavy",
      five,
      specOf("sedge", "[E5, A4, D4, { name: G3, mass: 3.3 g/m }, C3]"),
      ...(["tension.range", "attend", /^G3 is stiff.*lighter/] as const),
    ],
    [
      "a string that is too light",
      five,
      specOf("sedge", "[E5, A4, D4, { name: G3, mass: 2.4 g/m }, C3]"),
      ...(["tension.range", "attend", /^G3 is slack.*heavier/] as const),
    ],
    [
      "a light set",
      four,
      specOf("sedge", "4", "set:\n  pitch.standard: 415 Hz\n"),
      ...(["tension.total", "attend", /heavier/] as const),
    ],
    [
      "a heavy set",
      four,
      specOf("sedge", "4", "set:\n  pitch.standard: 466 Hz\n"),
      ...(["tension.total", "attend", /lighter/] as const),
    ],
    [
      "a wire near its strength",
      five,
      specOf("sedge", "[{ name: E5, pitch: G5 }, A4, D4, G3, C3]"),
      ...(["string.strength", "attend", /E5 breaks soon/] as const),
    ],
    [
      "a wire over its strength",
      five,
      specOf("sedge", "[{ name: E5, pitch: B5 }, A4, D4, G3, C3]"),
      ...(["string.strength", "refuse", /E5 breaks soon/] as const),
    ],
  ])("find a planted fault: %s", (_, sound, faulty, id, status, why) => {
    expect(found(sound, id)).toMatchObject({ status: "pass", source: expect.stringContaining("confirm") });
    expect(found(faulty, id)).toMatchObject({ status, why: expect.stringMatching(why) });
  });

  it("tell the limit on the side that was passed", () => {
    expect(found(forced(five, { "bridge.tilt": 5.5 }), "bridge.resultant")!.limit).toBeCloseTo(-1.45, 9);
    expect(
      found(specOf("sedge", "[E5, A4, D4, { name: G3, mass: 3.3 g/m }, C3]"), "tension.range"),
    ).toMatchObject({ limit: 50 });
    const wire = found(five, "string.strength")!;
    expect(wire.limit).toBeCloseTo(1800, 9);
    expect(wire.found).toBeLessThan(1500);
  });

  it("leave out what an instrument doesn't have", () => {
    expect(found(saddled, "bridge.resultant")).toBeUndefined();
    expect(found(four, "bridge.shear")).toBeUndefined();
    expect(found(five, "tension.total")).toBeUndefined();
    expect(found(specOf("bulrush", 4), "string.strength")).toBeUndefined();
  });

  it("name a string that no usual tension is known of, and try the others", () => {
    const strings = "[E5, A4, D4, { name: F3, pitch: F3, diameter: 0.9, mass: 3.4 }]";
    expect(found(specOf("sedge", strings), "tension.range")).toMatchObject({
      status: "pass",
      why: expect.stringContaining("nothing usual is known of F3"),
    });
  });

  it.each(everyCount)("find $design's $count strings in their own rows' ranges", ({ design, count }) => {
    const spec = specOf(design, count);
    expect(found(spec, "tension.range")!.status).toBe("pass");
    if (count === 4) expect(found(spec, "tension.total")!.status).toBe("pass");
  });

  it("attend to a viola's high E, whose wire is at 1.99 of 2.6 GPa", () => {
    expect(found(specOf("mallow", 5), "string.strength")).toMatchObject({ status: "attend", unit: "MPa" });
  });
});

describe("a tuning over the wire's strength", () => {
  const told = (spec: Spec) => contradictions(spec, modelOf(spec, memoryStore()).instrument);

  it("is told at the string, with how far to lower it, which then does", () => {
    const [problem] = told(specOf("sedge", "[{ name: E5, pitch: B5 }, A4, D4, G3, C3]"));
    expect(problem).toMatchObject({
      ...{ code: "contradiction", name: "strings.E5", position: { file: "order.yaml", line: 3 } },
      found: expect.stringContaining("E5 tuned to"),
      hint: expect.stringMatching(/at least 2 semitones lower/),
    });
    const shorter = "set:\n  string.length: 326 mm\n";
    const also = specOf("sedge", "[{ name: E5, pitch: B5 }, A4, D4, G3, C3]", shorter);
    expect(told(also)[0]).toMatchObject({ name: "strings.E5", position: { line: 3 } });
    expect(told(specOf("sedge", "[{ name: E5, pitch: A5 }, A4, D4, G3, C3]"))).toEqual([]);
    expect(told(specOf("sedge", "[{ name: E5, pitch: Bb5 }, A4, D4, G3, C3]"))).toHaveLength(1);
  });

  it("is told at the string length or the pitch where the order changed that", () => {
    const spec = forced(five, { "pitch.standard": 600 });
    expect(told(spec)[0]).toMatchObject({ name: "pitch.standard", position: { line: 9 } });
    const long = forced(five, { "string.length": 460, "core.end": 700 });
    expect(told(long).map(({ name }) => name)).toContain("string.length");
    expect(
      told(long)
        .map(({ hint }) => hint)
        .join(),
    ).toMatch(/set string.length under \d/);
  });

  it("says nothing of a string whose maker gives other figures, since its wire is not known", () => {
    const strings = "[{ name: E5, pitch: B5, diameter: 0.26, mass: 0.4 }, A4, D4, G3, C3]";
    expect(told(specOf("sedge", strings))).toEqual([]);
  });
});
