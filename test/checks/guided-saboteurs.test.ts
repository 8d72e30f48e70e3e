import { describe, expect, it } from "vitest";
import { findings } from "../../src/checks/checks.ts";
import { guidedChecks } from "../../src/checks/guided/guided-checks.ts";
import type { Path } from "../../src/geometry/path.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import type { Fixture } from "../../src/workshop/guided/fixture.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { orderText, resolved, sampleText, specOf } from "../samples.ts";
import { cutAgain, edgeIn, movedBy, spoilt } from "./spoilt-fixture.ts";

const store = memoryStore();
const five = specOf("sedge", 5);
const file = "wing-treble-router";
const found = (model: Model, name: string) =>
  findings(model, guidedChecks).find(({ id }) => id === `${name}.${file}`)!;

/** Along y from a fixture's base to its work: with the other face up they lie the other way round. */
const toWork = ({ outline }: Fixture) => Math.sign(outline.points.reduce((sum, { y }) => sum + y, 0));
describe("a hollow that the cutter can't touch", () => {
  // The rim dips in the middle of a joint of 140: a radius of about 8 is too tight for a bit of 19.
  const dip = (finish: string) =>
    sampleText("designs", "sedge.yaml").replace(
      /- \{ id: rim, through: \[\[0\.9286.*/,
      `- { id: rim, ${finish}through: [[0.74, 0.9], [0.62, 0.4], [0.5, 0.9]], to: [0, 0.0862], corner: 4.5 mm, use: cut }`,
    );
  const specWith = (finish: string, more = ""): Spec => {
    const spec = resolved(orderText("sedge", 5, more), {}, { designs: { sedge: dip(finish) } });
    if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
    return spec.value;
  };
  const named = `fixtures:\n  ${file}: { cutter: straight-19 }\n`;

  it("is refused with its place, how deep, and the largest owned cutter that would do", () => {
    const finding = found(modelOf(specWith("", named), store), "cutter.large");
    expect(finding).toMatchObject({ status: "refuse", stake: "spoilage" });
    expect(finding.found).toBeGreaterThan(0.1);
    expect(finding.why).toMatch(
      /straight-19 leaves wood at 8\d(\.\d+)?, -?2\d(\.\d+)? over [\d.]+ mm, [\d.]+ deep/,
    );
    expect(finding.why).toMatch(
      /the largest owned cutter that would do is straight-12|a cutter of [\d.]+ mm or less would do/,
    );
    // What it leaves is listed, so that the virtual cut itself holds beside it.
    expect(found(modelOf(specWith("", named), store), "virtual-cut").status).toBe("pass");
  });

  it("is left to the hand where the design says so, and listed", () => {
    const model = modelOf(specWith("finish: hand, ", named), store);
    expect(found(model, "cutter.large")).toMatchObject({
      status: "pass",
      why: "1 places are left to the hand",
    });
  });
});

describe("saboteurs, each found by the check that is there for it", () => {
  it("a guide 0.2 larger than written, a wrong sign, an edge shifted by 0.02", () => {
    const larger = spoilt(five, file, (fixture) => ({
      cut: cutAgain(fixture, { guide: fixture.setUp!.guide.diameter + 0.2 }),
    }));
    expect(found(larger, "virtual-cut")).toMatchObject({ status: "refuse", found: expect.closeTo(0.1, 3) });
    const pinned = specOf("sedge", 5, `fixtures:\n  ${file}: { cutter: straight-19, guide: pin-12 }\n`);
    const wrong = spoilt(pinned, file, (fixture) => ({
      cut: cutAgain(fixture, { edge: edgeIn(spoiltEdge(fixture)).edge }),
    }));
    expect(found(modelOf(pinned, store), "virtual-cut").status).toBe("pass");
    expect(found(wrong, "virtual-cut").found).toBeGreaterThan(3);
    const shifted = spoilt(five, file, (fixture) => ({
      cut: cutAgain(fixture, { edge: movedBy(edgeIn(fixture).edge, 0, 0.02) }),
    }));
    expect(found(shifted, "virtual-cut").status).toBe("refuse");
  });

  /** A fixture whose edge is the finished one itself, moved by nothing, though its offset is 3.185. */
  function spoiltEdge(fixture: Fixture): Fixture {
    const edge = edgeIn(fixture);
    return { ...fixture, edge: { ...edge, edge: edge.led } };
  }

  it("a clamp moved toward the path, and one that takes in a pin", () => {
    const shift = (what: string, by: number) =>
      spoilt(five, file, (fixture) => {
        const kept = fixture.kept.map((one) =>
          one.id === what ? { ...one, path: movedBy(one.path, by, 0) } : one,
        );
        return { kept, cut: cutAgain(fixture, { kept }) };
      });
    // 11 mm of room for 6: 5 nearer is still enough, 10 is not, 40 is in the cutter's circle.
    expect(found(shift("clamp 2", 5), "clamp.swept").status).toBe("pass");
    expect(found(shift("clamp 2", 10), "clamp.swept")).toMatchObject({ status: "refuse", stake: "injury" });
    expect(found(shift("clamp 2", 40), "clamp.swept").found).toBeLessThan(0);
    expect(found(shift("batten", 5), "clamp.swept").status).toBe("refuse");
    expect(found(shift("index pin 8", 40), "metal").status).toBe("refuse");
    expect(found(shift("index pin 8", 5), "metal").status).toBe("pass");
  });

  it("handholds too near, nearer still, and none", () => {
    const nearer = (by: number) =>
      spoilt(five, file, (fixture) => {
        const kept = fixture.kept.map((one) =>
          one.what === "handhold" ? { ...one, path: movedBy(one.path, 0, by * toWork(fixture)) } : one,
        );
        return { kept, cut: cutAgain(fixture, { kept }) };
      });
    expect(found(nearer(20), "hand.near").status).toBe("attend");
    expect(found(nearer(200), "hand.near").status).toBe("refuse");
    const none = spoilt(five, file, (fixture) => {
      const kept = fixture.kept.filter(({ what }) => what !== "handhold");
      return { kept, cut: cutAgain(fixture, { kept }) };
    });
    expect(found(none, "hand.near").status).toBe("refuse");
  });

  it("a climb arrow, the feed of the other rotation, a swapped hand", () => {
    const back = spoilt(five, file, ({ feed }) => ({
      feed: {
        ...feed!,
        tool: feed!.tool.map((one, i) => (i === 2 ? { ...one, way: { x: -one.way.x, y: -one.way.y } } : one)),
      },
    }));
    expect(found(back, "feed.climb")).toMatchObject({ status: "refuse", found: 1, stake: "injury" });
    const turned = spoilt(five, file, ({ setUp }) => ({
      setUp: { ...setUp!, machine: { ...setUp!.machine, rotation: "cw" } },
    }));
    expect(found(turned, "feed.climb").found).toBeGreaterThan(2);
    // The right hand's arrows on the left hand's edge: mirrored, since a machine isn't.
    const left = specOf("sedge", 5, "", { hand: "left" });
    const swapped = spoilt(left, file, () => {
      const right = modelOf(five, store)
        .fixtures()
        .find((one) => one.file === file)!;
      const flip = ({ x, y }: { x: number; y: number }) => ({ x, y: -y });
      return {
        feed: {
          ...right.feed!,
          tool: right.feed!.tool.map(({ at, way }) => ({ at: flip(at), way: flip(way) })),
        },
      };
    });
    expect(found(modelOf(left, store), "feed.climb").status).toBe("pass");
    expect(found(swapped, "feed.climb").status).toBe("refuse");
    expect(
      found(
        spoilt(five, file, ({ feed }) => ({ feed: { ...feed!, tool: [] } })),
        "feed.climb",
      ).status,
    ).toBe("refuse");
  });

  const treble = modelOf(five, store)
    .fixtures()
    .find((one) => one.file === file)!;

  it("a removed run-in, a shorter run-out, one that turns off", () => {
    const edited = (edit: (points: Path["points"]) => Path["points"]) =>
      spoilt(five, file, (fixture) => {
        const edge = edgeIn(fixture);
        return { edge: { ...edge, edge: { closed: false, points: edit(edge.edge.points) } } };
      });
    expect(
      found(
        edited((points) => points.slice(1)),
        "run-in.missing",
      ),
    ).toMatchObject({ status: "refuse", stake: "injury" });
    const shorter = found(
      edited((points) => [
        ...points.slice(0, -1),
        { ...points.at(-1)!, y: points.at(-1)!.y + 30 * toWork(treble) },
      ]),
      "run-in.missing",
    );
    expect(shorter).toMatchObject({ status: "refuse", found: expect.closeTo(20, 3) });
    const off = edited((points) => [...points.slice(0, -1), { ...points.at(-1)!, x: points.at(-1)!.x + 3 }]);
    expect(found(off, "run-in.missing").found).toBe(0);
  });

  it("a set-up whose numbers were changed after it was chosen", () => {
    const other = (
      change: (setUp: NonNullable<Fixture["setUp"]>) => Partial<NonNullable<Fixture["setUp"]>>,
    ) => spoilt(five, file, ({ setUp }) => ({ setUp: { ...setUp!, ...change(setUp!) } }));
    expect(
      found(
        other(({ cutter }) => ({ cutter: { ...cutter, length: 24 } })),
        "cutter.short",
      ).status,
    ).toBe("refuse");
    expect(
      found(
        other(({ speed }) => ({ speed: { ...speed, rpm: 22000 } })),
        "speed.mark",
      ).status,
    ).toBe("refuse");
    expect(
      found(
        other(({ speed }) => ({ speed: { ...speed, rpm: 80000 } })),
        "rim-speed",
      ).status,
    ).toBe("refuse");
    expect(
      found(
        other(() => ({ first: null })),
        "removal",
      ).status,
    ).toBe("refuse");
    expect(
      found(
        other(({ guide }) => ({ guide: { ...guide, kind: "bush" as const } })),
        "guide.bearing",
      ).status,
    ).toBe("refuse");
  });
});
