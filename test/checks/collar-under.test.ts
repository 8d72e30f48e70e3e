import { describe, expect, it } from "vitest";
import { fixtureFlats } from "../../src/drawing/flat/fixture-flats.ts";
import { setUpSheets } from "../../src/drawing/sheet/set-up/set-up-sheets.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { toldProblems } from "../order/problems.ts";
import { orderText, resolved, specOf } from "../samples.ts";
import { fixtureIn, spoilt, told } from "./spoilt-fixture.ts";

const file = "neck-shaper";
const store = memoryStore();
const usual = specOf("sedge", 5);
const under = specOf("sedge", 5, `fixtures:\n  ${file}: { template: under }\n`);
const allowed: Spec = {
  ...under,
  shop: {
    ...under.shop,
    machines: under.shop.machines.map((one) =>
      one.kind === "shaper" ? { ...one, "collar-under": "allowed" } : one,
    ),
  },
};
const rule = (spec: Spec) => told(modelOf(spec, store), "collar.under", file);
const notesOf = (spec: Spec) =>
  fixtureFlats
    .find(({ name }) => name === file)!
    .of(modelOf(spec, store), store)
    .value.notes.map(({ text }) => text)
    .join("\n");

describe("where a shaper's template lies", () => {
  it("is on top of the work unless the order says otherwise", () => {
    for (const name of ["wing-bass-router", "wing-treble-router", file, "fingerboard-router"])
      expect(fixtureIn(usual, name).template, name).toBe("over");
    expect(fixtureIn(under, file).template).toBe("under");
    expect(fixtureIn(under, "wing-bass-router").template).toBe("over");
    expect(rule(usual)).toMatchObject({ status: "pass", found: 0 });
  });

  it("is refused under the work in a shop that doesn't allow it, and the fixture is held back", () => {
    const finding = rule(under);
    expect(finding).toMatchObject({ status: "refuse", stake: "injury", found: 1, holds: [file] });
    expect(finding.why).toContain("put the template on top of the work");
    const { sheets, refused } = setUpSheets(modelOf(under, store), [finding]);
    expect(refused.map(({ step, check }) => [step.setUp.file, check])).toEqual([
      [file, `collar.under.${file}`],
      [file, `collar.under.${file}`],
    ]);
    expect(sheets.length).toBeGreaterThan(3);
  });

  it("is pointed out where the shop allows it, and what is written says so in place of the usual words", () => {
    expect(rule(allowed)).toMatchObject({ status: "attend", stake: "injury", found: 1 });
    expect(notesOf(usual)).toContain("COLLAR OVER THE CUTTER");
    expect(notesOf(usual)).toContain("A PACKER AS THICK AS THE WORK");
    expect(notesOf(allowed)).toContain("LIFTING THE FIXTURE DRIVES IT INTO THE CUTTER");
    expect(notesOf(allowed)).not.toMatch(/COLLAR OVER THE CUTTER|A PACKER AS THICK AS THE WORK/);
  });

  it("is found where it was laid under after it was chosen", () => {
    const turned = spoilt(usual, file, () => ({ template: "under" }));
    expect(told(turned, "collar.under", file).status).toBe("refuse");
  });

  it("is no choice of a router's fixture or of an inside template", () => {
    for (const name of ["wing-bass-router", "inlays-inside"]) {
      const [problem, more] = toldProblems(
        resolved(orderText("sedge", 5, `fixtures:\n  ${name}: { template: under }\n`)),
      );
      expect(more).toBeUndefined();
      expect(problem).toMatchObject({ code: "unknown-name", name: `fixtures.${name}.template` });
    }
    const [wrong] = toldProblems(
      resolved(orderText("sedge", 5, `fixtures:\n  ${file}: { template: beside }\n`)),
    );
    expect(wrong).toMatchObject({ allowed: "over, under" });
  });
});
