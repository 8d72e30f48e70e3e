import { describe, expect, it } from "vitest";
import { readAs } from "../../src/order/read.ts";
import { hardwareFile } from "../../src/order/schema/hardware-items.ts";
import { orderText, resolved, sampleText, specOf } from "../samples.ts";

const sedge = sampleText("designs", "sedge.yaml");
const hardware = sampleText("hardware.yaml");

function problemsWith(from: string, to: string) {
  expect(sedge).toContain(from);
  const found = resolved(orderText("sedge", 4), {}, { designs: { sedge: sedge.replace(from, to) } });
  return found.ok ? [] : found.problems;
}

describe("the hardware", () => {
  it("that a design names is weighed as hardware.yaml has it, and what it weighs itself as it says", () => {
    expect(hardware).toContain(
      "item: pickup-strip, kind: pickup, length: 45 mm, width: 4 mm, depth: 1.5 mm, mass: 10 g",
    );
    expect(specOf("sedge", 4).hardware).toEqual([
      { id: "tuner", item: null, mass: 25, at: "tuners" },
      { id: "pickup", item: "pickup-strip", mass: 10, at: "bridge" },
    ]);
  });

  it("that hardware.yaml doesn't know is told at its place, with the nearest name", () => {
    const [problem, ...others] = problemsWith("item: pickup-strip,", "item: pickup-stirp,");
    expect(others).toEqual([]);
    expect(problem).toMatchObject({
      code: "unknown-name",
      name: "hardware.1.item",
      hint: "did you mean pickup-strip?",
    });
    expect(problem!.position.line).toBe(sedge.slice(0, sedge.indexOf("pickup-strip")).split("\n").length);
  });

  it("has an item or a mass, and not both", () => {
    for (const to of ["item: pickup-strip, mass: 3 g,", ""])
      expect(problemsWith("item: pickup-strip,", to)).toMatchObject([
        { allowed: "either an item of hardware.yaml or a mass" },
      ]);
  });

  it("is refused twice of one name, of two shapes or none, and with two ways through wood", () => {
    const faulty = (from: string, to: string) => {
      expect(hardware).toContain(from);
      return readAs(hardwareFile, hardware.replace(from, to), "hardware.yaml").ok;
    };
    expect(readAs(hardwareFile, hardware, "hardware.yaml").ok).toBe(true);
    expect(faulty("item: pickup-bar", "item: pickup-strip")).toBe(false);
    expect(faulty("diameter: 17 mm", "diameter: 17 mm\n    length: 17 mm")).toBe(false);
    expect(faulty("diameter: 17 mm\n", "\n")).toBe(false);
    expect(faulty("shaft: {", "thread: { hole: 7 mm, reach: 5 mm }\n    shaft: {")).toBe(false);
    expect(faulty("mass: 14 g", "mass: 0 g")).toBe(false);
    expect(faulty("depth: 9.5 mm", "depth: -9.5 mm")).toBe(false);
  });
});
