import { describe, expect, it } from "vitest";
import { findings } from "../../../src/checks/checks.ts";
import { recessReach } from "../../../src/checks/recess-reach.ts";
import { recessWall } from "../../../src/checks/recess-wall.ts";
import { instrument } from "../../../src/instrument/instrument.ts";
import type { Spec } from "../../../src/order/spec.ts";
import { dimensionsOf } from "../../../src/report/dimensions.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { modelOf } from "../../../src/workshop/model.ts";
import { forced } from "../../forced.ts";
import { specOf } from "../../samples.ts";
import { specWith } from "./changed-design.ts";

const store = memoryStore();
const made = (spec: Spec) => instrument(spec, store);

describe("the checks of recesses", () => {
  const found = (spec: Spec, id: string) =>
    findings(modelOf(spec, store), [recessWall, recessReach]).find((one) => one.id === id)!;

  it("recess.wall refuses where a wall is thinner than the design's, says which and holds its files back", () => {
    const spec = specOf("sedge", 4);
    const { found: least } = found(spec, "recess.wall");
    const thin = found(forced(spec, { "recess.wall": least + 0.1 }), "recess.wall");
    expect(thin).toMatchObject({
      status: "refuse",
      stake: "spoilage",
      found: least,
      why: expect.stringMatching(/breaks out: (move|raise|change)/),
    });
    expect(thin.holds).toEqual(
      expect.arrayContaining(["neck-back", "wing-bass-back", "wing-treble-back", "cover-battery"]),
    );
    expect(found(forced(spec, { "recess.wall": least }), "recess.wall").status).toBe("pass");
  });

  it("recess.wall finds the wood under a battery in a core of its depth, and that told to raise is enough", () => {
    const spec = forced(specOf("sedge", 4), { "core.depth": 21.2, "recess.wall": 1.9 });
    const walls = made(spec).recessWalls.filter(
      ({ between }) => between === "recess battery and the face opposite",
    );
    expect(walls[0]!.left).toBeCloseTo(21.2 - 17.5 - 0.15 - 2, 9);
    const to = Number(/raise core.depth to ([\d.]+) mm/.exec(walls[0]!.mend)![1]);
    expect(to - 17.5 - 0.15 - 2).toBeGreaterThanOrEqual(1.9 - 1e-9);
  });

  it("recess.reach refuses a jack whose wall is thicker than it reaches through, and tells by how much", () => {
    const near = specOf("sedge", 4);
    expect(found(near, "recess.reach")).toMatchObject({ status: "pass", limit: 12 });
    const deep = specWith("at: [0.7419, 0.5516]", "at: [0.78, 0.5]");
    const refused = found(deep, "recess.reach");
    expect(refused).toMatchObject({
      status: "refuse",
      subject: "wing-bass",
      holds: ["wing-bass", "wing-bass-back"],
    });
    expect(refused.why).toContain(`by ${(Math.ceil((refused.found - 12) * 100) / 100).toString()} mm`);
  });

  it("say nothing of an instrument without recesses", () => {
    const spec = specOf("sedge", 4);
    const bare = { ...spec, recesses: [], bores: [] };
    expect(findings(modelOf(bare, store), [recessWall, recessReach])).toEqual([]);
    expect(dimensionsOf(bare).some(({ id }) => id.startsWith("bore."))).toBe(false);
  });
});
