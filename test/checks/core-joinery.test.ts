import { describe, expect, it } from "vitest";
import { findings } from "../../src/checks/checks.ts";
import { coreJoinery } from "../../src/checks/core-joinery.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced, movesIn } from "../forced.ts";
import { everyCount, specOf } from "../samples.ts";

const found = (spec: Spec) => findings(modelOf(spec, memoryStore()), [coreJoinery])[0]!;
const told = (spec: Spec) => contradictions(spec, instrument(spec, memoryStore()));

/** The least distance of the posts' axes from the pins', the slow way, less both radii. */
function slowly(spec: Spec): number {
  const { instrument: made } = modelOf(spec, memoryStore());
  const of = (id: string) => spec.values[id]!.value;
  const fall = (of("core.slope") * Math.PI) / 180;
  if (made.tailpiece.kind !== "ok") throw new Error("no tailpiece");
  const posts = made.tailpiece.posts.flatMap(({ at, size }) =>
    Array.from({ length: 401 }, (_, i) => {
      const z = (-of("tailpiece.post.depth") * i) / 400;
      const x = of("core.start") + at.x * Math.cos(fall) + z * Math.sin(fall);
      return { x, y: at.y, z: -of("core.drop") - at.x * Math.sin(fall) + z * Math.cos(fall), size };
    }),
  );
  const pins = made.wingPinHoles.flatMap(({ hole: { at, out, depth, diameter } }) =>
    Array.from({ length: 401 }, (_, i) => {
      const deep = (depth * i) / 400;
      return { x: at.x - deep * out.x, y: at.y - deep * out.y, z: at.z - deep * out.z, diameter };
    }),
  );
  let least = Number.POSITIVE_INFINITY;
  for (const a of posts)
    for (const b of pins)
      least = Math.min(least, Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z) - (a.size + b.diameter) / 2);
  return least;
}

describe("wall.core", () => {
  it.each(everyCount)("passes $design with $count strings", ({ design, count }) => {
    const finding = found(specOf(design, count));
    expect(finding).toMatchObject({ status: "pass", limit: 1.5, holds: ["neck-plan"] });
    expect(finding.found).toBeGreaterThan(1.5);
  });

  it("measures the wood between a post and a pin as slow sampling does", () => {
    const spec = forced(specOf("sedge", 5), { "wing.treble.start": 157, "tailpiece.post.depth": 13 });
    const walls = instrument(spec, memoryStore()).joineryWalls.filter(({ between }) => /post/.test(between));
    const pins = walls.filter(({ between }) => between.startsWith("pin"));
    const least = Math.min(...pins.map(({ left }) => left));
    expect(least).toBeGreaterThan(0);
    // A post's bottom edge stands out past its axis, and a pin is taken as ending round.
    expect(Math.abs(least - slowly(spec))).toBeLessThan(0.3);
  });

  it("refuses a post's hole that leaves too little of the core under it, and the move told mends it", () => {
    const spec = forced(specOf("sedge", 5), { "tailpiece.post.depth": 29 });
    const finding = found(spec);
    expect(finding).toMatchObject({ status: "refuse", found: 1, stake: "spoilage" });
    const [move] = movesIn(finding.why.replace("tailpiece.post.depth", "tailpiece.post.depth"));
    expect(found(forced(spec, { [move!.id]: move!.to })).status).toBe("pass");
  });

  it("refuses a pin that comes too near a post", () => {
    // The treble wing drawn to the head until its second pin stands beside the treble post.
    const near = forced(specOf("sedge", 5), { "wing.treble.start": 152.5 });
    expect(found(near)).toMatchObject({
      status: "refuse",
      why: expect.stringContaining("pin b of the treble wing and the tailpiece's post-treble"),
    });
  });
});

describe("joinery that can't be made", () => {
  it("is a post's hole through the core, told with the depth that mends it", () => {
    const [problem] = told(forced(specOf("thrift", 4), { "tailpiece.post.depth": 31 }));
    expect(problem).toMatchObject({
      name: "tailpiece.post.depth",
      found: expect.stringContaining("the core's back, which overlap by 1 mm"),
      hint: "lower tailpiece.post.depth to 28.5 mm",
    });
  });

  it("is a pin of a wing in a post", () => {
    const [problem] = told(forced(specOf("sedge", 5), { "wing.treble.start": 147 }));
    expect(problem).toMatchObject({
      name: "wing.treble.start",
      found: expect.stringContaining("pin b of the treble wing and the tailpiece's post-treble"),
    });
  });

  it("is an index pin under the board in a wing's pin, but not one that ends over it", () => {
    const spec = specOf("sedge", 5);
    const at = instrument(spec, memoryStore()).wingPinHoles[0]!.hole.at.x;
    const over = { "pin.lower.at": at, "pin.lower.offset": -20, "fingerboard.length": 270 };
    const obstacles = (depth: number) =>
      instrument(forced(spec, { ...over, "pin.depth": depth }), memoryStore()).neckPinWalls.filter(
        ({ between }) => /lower pin and pin a of the bass wing/.test(between),
      );
    expect(obstacles(7)).toEqual([]);
    expect(Math.min(...obstacles(22).map(({ left }) => left))).toBeLessThan(0);
  });
});
