import { describe, expect, it } from "vitest";
import { findings } from "../../src/checks/checks.ts";
import { canBeOverruled } from "../../src/order/overrule.ts";
import type { Bandsaw, Shop } from "../../src/order/shop.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import type { PartSawing } from "../../src/workshop/part-sawing.ts";
import { alone, forced } from "../forced.ts";
import { foundBy } from "../found-by.ts";
import { everyCount, specOf } from "../samples.ts";

const foundIn = (model: Model, id: string) => {
  const finding = foundBy(model, id);
  if (finding === undefined) throw new Error(`no check ${id}`);
  return finding;
};
const found = (spec: Spec, id: string) => foundIn(modelOf(spec, memoryStore()), id);
const five = specOf("sedge", 5);
const thrift = specOf("thrift", 5);
const wing = "wing-treble-saw";

const inShop = (spec: Spec, change: Partial<Shop>): Spec => ({ ...spec, shop: { ...spec.shop, ...change } });
const withSaw = (spec: Spec, change: Partial<Bandsaw>): Spec =>
  inShop(spec, {
    machines: spec.shop.machines.map((one) => (one.kind === "bandsaw" ? { ...one, ...change } : one)),
  });
/** The model of a spec in which one part's sawing is other than it was. */
function spoilt(spec: Spec, file: string, change: (sawing: PartSawing) => Partial<PartSawing>): Model {
  const model = modelOf(spec, memoryStore());
  const all = model.partSawing().map((sawing) => {
    if (sawing.file !== file) return sawing;
    const keys = Object.keys(sawing) as (keyof PartSawing)[];
    const plain = Object.fromEntries(keys.map((key) => [key, sawing[key]])) as unknown as PartSawing;
    return { ...plain, ...change(sawing) };
  });
  return { ...model, partSawing: () => all };
}

/** A sawing of which a cut of the sequence is other than it was. */
const withCut =
  (cut: string, change: Partial<PartSawing["sequence"][number]>) =>
  ({ sequence }: PartSawing) => ({
    sequence: sequence.map((one) => (one.cut === cut ? { ...one, ...change } : one)),
  });

/** A sawing of which a line is moved across. */
const withLine =
  (cut: string, x: number, y: number) =>
  ({ cuts }: PartSawing) => {
    if (cuts.sawn.kind !== "ok") throw new Error(cuts.sawn.kind);
    const lines = cuts.sawn.lines.map((line) =>
      line.cut === cut
        ? {
            ...line,
            path: { ...line.path, points: line.path.points.map((p) => ({ ...p, x: p.x + x, y: p.y + y })) },
          }
        : line,
    );
    return { cuts: { ...cuts, sawn: { ...cuts.sawn, lines } } };
  };

describe("the checks of saw drawings", () => {
  it.each(everyCount)("refuse nothing of $design with $count strings", ({ design, count }) => {
    const all = findings(modelOf(specOf(design, count), memoryStore()));
    const own = all.filter(({ id }) => /-saw$|^blank\.|^cut-list|^dust|^work\.small$/.test(id));
    expect(own.length).toBeGreaterThan(20);
    for (const { id, status, why, source } of own) {
      expect(status, `${id} ${why}`).not.toBe("refuse");
      expect(why.length).toBeGreaterThan(10);
      expect(source.length).toBeGreaterThan(8);
      if (status === "attend") expect(id).toMatch(/^(saw\.tight|saw\.line\.fingerboard|dust|work\.small$)/);
    }
  });

  const sawless = inShop(five, { machines: five.shop.machines.filter(({ kind }) => kind !== "bandsaw") });
  it.each<[string, Spec, string, string, RegExp]>([
    ["no bandsaw", sawless, `saw.missing.${wing}`, "refuse", /no bandsaw/],
    [
      "a saw too low",
      withSaw(five, { height: 25 }),
      `saw.height.${wing}`,
      "refuse",
      /25\.38 mm high doesn't go under/,
    ],
    ["a saw too shallow", withSaw(five, { throat: 300 }), `saw.throat.${wing}`, "attend", /column/],
    [
      "a table that doesn't tilt so far",
      withSaw(five, { tilt: [-5, 11] }),
      `saw.tilt.${wing}`,
      "refuse",
      /12 degrees .* tilts 11/,
    ],
    [
      "a blank with no room for the line",
      forced(five, { "fingerboard.allowance.side": 1 }),
      "saw.line.fingerboard-saw",
      "refuse",
      /less wood than wanted/,
    ],
  ])("find a planted fault: %s", (_, spec, id, status, why) => {
    expect(found(five, id).status, "as it was").toBe("pass");
    expect(found(spec, id)).toMatchObject({ status, why: expect.stringMatching(why) });
  });

  it("hold back the drawing that is sawn to, and no other, while they refuse", () => {
    expect(found(sawless, `saw.missing.${wing}`).holds).toEqual([wing]);
    expect(found(sawless, `saw.height.${wing}`)).toMatchObject({ status: "attend", limit: 0 });
    expect(found(thrift, "saw.line.body-saw").holds).toEqual(["body-saw"]);
    expect(found(thrift, "blank.stock.body-saw").holds).toEqual(["body-saw"]);
  });
});

describe("saboteurs at the saw, each found by the check that is there for it", () => {
  it("a line 1 mm into a part, a joint's 1 mm nearer its face, a line that is not there", () => {
    expect(foundIn(spoilt(five, wing, withLine("rim", -1, 0)), `saw.line.${wing}`)).toMatchObject({
      ...{ status: "refuse", limit: 1.6 },
      found: expect.closeTo(1, 1),
    });
    const joint = foundIn(spoilt(five, wing, withLine("joint", 0, 1)), `saw.line.${wing}`);
    expect(joint).toMatchObject({
      status: "refuse",
      found: expect.closeTo(2 - Math.cos((12 * Math.PI) / 180) * Math.cos((3 * Math.PI) / 180), 2),
    });
    const without = ({ cuts }: PartSawing) => {
      if (cuts.sawn.kind !== "ok") throw new Error(cuts.sawn.kind);
      return { cuts: { ...cuts, sawn: { ...cuts.sawn, lines: cuts.sawn.lines.slice(0, 1) } } };
    };
    expect(foundIn(spoilt(five, wing, without), `saw.line.${wing}`)).toMatchObject({
      status: "refuse",
      found: 0,
    });
    expect(
      foundIn(spoilt(thrift, "body-saw", withLine("outline", 1, 0)), "saw.line.body-saw").found,
    ).toBeCloseTo(1, 1);
    expect(foundIn(spoilt(thrift, "body-saw", withLine("outline", 9, 0)), "saw.line.body-saw").found).toBe(0);
    const none = ({ cuts }: PartSawing) => ({ cuts: { ...cuts, sawn: { kind: "no-line" as const } } });
    expect(foundIn(spoilt(five, wing, none), `saw.line.${wing}`)).toMatchObject({
      status: "refuse",
      found: 0,
    });
  });

  it("a joint's line where it stands on the front, drawn for a cut with the back up", () => {
    const other = forced(alone(five), { "wing.treble.cant": -12, "wing.treble.rake": 0 });
    expect(found(other, `saw.line.${wing}`).status).toBe("pass");
    const front = withLine("joint", 0, 22 * Math.tan((12 * Math.PI) / 180));
    expect(foundIn(spoilt(other, wing, front), `saw.line.${wing}`)).toMatchObject({
      status: "refuse",
      found: 0,
    });
  });

  it("a tilted table without a fence on its low side", () => {
    const model = spoilt(five, wing, withCut("joint", { fence: "none" }));
    expect(foundIn(model, `tilt.slide.${wing}`)).toMatchObject({
      status: "refuse",
      stake: "injury",
      found: expect.closeTo(12, 6),
    });
    expect(found(five, `tilt.slide.${wing}`)).toMatchObject({ status: "pass", found: 0 });
  });

  it("a rounded face on the table, and the neck's second cut without its offcuts taped back", () => {
    const rounded = spoilt(five, wing, withCut("rim", { face: "rounded" }));
    expect(foundIn(rounded, `saw.unsupported.${wing}`)).toMatchObject({
      status: "refuse",
      stake: "injury",
      found: 1,
    });
    expect(found(five, `saw.unsupported.${wing}`).status).toBe("pass");
    const model = modelOf(five, memoryStore());
    const [first, second] = model.sawing.sequence;
    const bare = { ...second, tapedBack: "nothing" as const };
    const faulty = {
      ...model,
      sawing: {
        ...model.sawing,
        stock: model.sawing.stock,
        place: model.sawing.place,
        cuts: model.sawing.cuts,
        sequence: [first, bare] as const,
      },
    };
    expect(foundIn(faulty, "saw.unsupported.neck-saw-side")).toMatchObject({
      ...{ status: "refuse", stake: "injury", found: 1, holds: ["neck-saw-side"] },
    });
    expect(foundIn(model, "saw.unsupported.neck-saw-side").status).toBe("pass");
  });

  it("a blank too short to be held", () => {
    const short = spoilt(five, wing, ({ blank }) => ({ blank: { ...blank, maxX: blank.minX + 279 } }));
    expect(foundIn(short, `work.small.${wing}`)).toMatchObject({
      status: "refuse",
      stake: "injury",
      limit: 280,
    });
    expect(canBeOverruled(`work.small.${wing}`)).toBe(false);
    expect(canBeOverruled("work.small")).toBe(false);
    expect(found(five, "work.small")).toMatchObject({
      status: "attend",
      stake: "injury",
      why: expect.stringMatching(/^bridge, nut, tailpiece/),
    });
    const model = modelOf(five, memoryStore());
    const long = {
      ...model.blanks,
      fingerboard: model.blanks.fingerboard,
      sawn: model.blanks.sawn,
      cutList: model.blanks.cutList,
      small: [],
    };
    expect(foundIn({ ...model, blanks: long }, "work.small").status).toBe("pass");
  });

  it("a blade too wide for the part, and none where it follows", () => {
    const only = (width: number) => withSaw(five, { blades: [{ width, kerf: 0.8 }] });
    expect(found(only(3.2), `saw.tight.${wing}`)).toMatchObject({ status: "pass", limit: 4.8 });
    const wide = found(only(12.7), `saw.tight.${wing}`);
    expect(wide).toMatchObject({ status: "attend", limit: 64, why: expect.stringContaining("relief cuts") });
  });
});
