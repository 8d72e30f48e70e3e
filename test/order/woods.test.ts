import { describe, expect, it } from "vitest";
import { readAs } from "../../src/order/read.ts";
import { woodsFile } from "../../src/order/schema/woods.ts";
import { orderText, resolved, sampleText, specOf } from "../samples.ts";

const sedge = sampleText("designs", "sedge.yaml");
const woods = sampleText("woods.yaml");

function problemsWith(from: string, to: string) {
  expect(sedge).toContain(from);
  const found = resolved(orderText("sedge", 4), {}, { designs: { sedge: sedge.replace(from, to) } });
  return found.ok ? [] : found.problems;
}

describe("the woods", () => {
  it("that a design names are told where the file of woods has none of that name", () => {
    const [problem, ...others] = problemsWith("  bridge: hard-maple\n", "  bridge: hard-mapel\n");
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: "unknown-name", name: "woods.bridge" });
    expect(problem!.hint).toContain("hard-maple");
    expect(problem!.position.line).toBe(
      sedge.slice(0, sedge.indexOf("  bridge: hard-maple")).split("\n").length,
    );
    expect(problemsWith("neck: [hard-maple, black-walnut]", "neck: [hard-maple, gold]")).toHaveLength(1);
  });

  it("come into a spec by their density, those alone that the design names", () => {
    const spec = specOf("sedge", 4);
    expect(spec.densities).toEqual({
      ...{ "hard-maple": 705, "black-walnut": 615, "african-ebony": 1010 },
      ...{ "carbon-rod": 1500, "yellow-poplar": 470 },
    });
    expect(specOf("thrift", 4).partWoods.wings).toBeNull();
  });

  it("are refused twice of one name, of no sensible density, and in another unit", () => {
    const faulty = (from: string, to: string) => {
      expect(woods).toContain(from);
      return readAs(woodsFile, woods.replace(from, to), "woods.yaml").ok;
    };
    expect(readAs(woodsFile, woods, "woods.yaml").ok).toBe(true);
    expect(faulty("wood: red-maple", "wood: hard-maple")).toBe(false);
    expect(faulty("705 kg/m3", "0.705")).toBe(false);
    expect(faulty("705 kg/m3", "705 mm")).toBe(false);
    expect(faulty("705 kg/m3", "0.705 g/cm3")).toBe(true);
  });
});
