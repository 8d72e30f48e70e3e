import { beforeAll, describe, expect, it } from "vitest";
import { circle } from "../../../src/geometry/circle.ts";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import type { Frame } from "../../../src/geometry/solid/frame.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../../src/geometry/solid/triangle-mesh.ts";
import { onHead } from "../../../src/instrument/head/frame.ts";
import type { Spec } from "../../../src/order/spec.ts";
import { printed } from "../../../src/workshop/jigs/print-rules.ts";
import { hits } from "../../ray.ts";
import { frettedSpec, specOf } from "../../samples.ts";
import { asSolid, inBoth, looked, type Made, madeOf } from "./look.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

/** All pieces of a jig together as they are put together. */
function together(made: Made, name: string): Solid {
  const names = made.files
    .map((file) => file.name)
    .filter((one) => one === name || one.startsWith(`${name}-`));
  expect(names.length, name).toBeGreaterThan(0);
  return { kind: "union", solids: names.map((one) => asSolid(made.meshOf(one))) };
}

function meshesOf(made: Made, name: string): TriangleMesh[] {
  const names = made.files
    .map((file) => file.name)
    .filter((one) => one === name || one.startsWith(`${name}-`));
  return names.map(made.meshOf);
}

/** A round rod through a plate from under it to over it: what a drill of that size takes. */
function rod(x: number, y: number, diameter: number): Solid {
  return {
    ...{ kind: "extrude", base: -5, height: 30 },
    outlines: [{ outer: circle({ x, y }, diameter / 2), holes: [] }],
  };
}

/** Whether rods of this diameter go through a jig at all these places. */
function takes(jig: Solid, places: readonly { x: number; y: number }[], diameter: number): boolean {
  return places.every(({ x, y }) => inBoth(kernel, jig, rod(x, y, diameter)) < 1e-4);
}

/** The shop's printer with another growth of holes. */
function growing(spec: Spec, growth: number): Spec {
  const machines = spec.shop.machines.map((machine) =>
    machine.kind === "printer" ? { ...machine, "hole-growth": growth } : machine,
  );
  return { ...spec, shop: { ...spec.shop, machines } };
}

const counts = process.env.NIGHTLY === undefined ? [5] : [4, 5, 6, 7];

describe.each(counts)("what places frets and dots on %d strings' board", (count) => {
  const made = madeOf(() => kernel, frettedSpec(count));
  const { fretSlots, boardDots, boardSideDots } = made.model.instrument;

  it("is a strip whose notches lie at the frets, as wide as the slot and the growth, with walls between", () => {
    const gaps = meshesOf(made, "fret-slots").flatMap((mesh) => {
      const sides = hits(mesh, [-50, 2, 1], [1, 0, 0]).map((at) => at - 50);
      // Wood begins and ends by turns: a notch lies between an end and the next beginning.
      return Array.from({ length: sides.length / 2 - 1 }, (_, i) => [sides[2 * i + 1]!, sides[2 * i + 2]!]);
    });
    expect(gaps).toHaveLength(24);
    for (const [i, [from, to]] of gaps.entries()) {
      expect((from! + to!) / 2).toBeCloseTo(made.model.instrument.fretSlots!.slots[i]!.x, 3);
      expect(to! - from!).toBeCloseTo(fretSlots!.width + 0.3, 3);
      if (i > 0) expect(from! - gaps[i - 1]![1]!).toBeGreaterThan(printed.wall);
    }
    // No notch farther from its fret's place, whatever the string length of another order is.
    expect(Math.abs((gaps[11]![0]! + gaps[11]![1]!) / 2 - 328 / 2)).toBeLessThan(1e-3);
  });

  it("is said to be measured before it is used, and to be a marking aid", () => {
    const what = made.files.find(({ name }) => name.startsWith("fret-slots"))!.what;
    expect(what).toMatch(/measure each notch .* against the report's fret\.N before it is used/);
  });

  it("are guides that take a pilot at every dot, for the face laid down on it and for the bass edge", () => {
    const face = boardDots!.list.map(({ x, y }) => ({ x, y: -y }));
    expect(takes(together(made, "dots-face"), face, 2.2)).toBe(true);
    const side = boardSideDots!.list.map(({ along, z }) => ({ x: along, y: -z }));
    expect(takes(together(made, "dots-side"), side, 2.2)).toBe(true);
    // The dots' own size doesn't go through.
    expect(takes(together(made, "dots-side"), side, boardSideDots!.size)).toBe(boardSideDots!.size < 2.3);
    // Those of another string length don't fit.
    const other = madeOf(() => kernel, frettedSpec(count, "set: { string.length: 326 }")).model.instrument;
    const moved = other.boardDots!.list.map(({ x, y }) => ({ x, y: -y }));
    expect(takes(together(made, "dots-face"), moved, 2.2)).toBe(false);
  });

  it("without the printer's growth of holes are found too narrow", () => {
    const small = madeOf(() => kernel, growing(frettedSpec(count), 0.02));
    const face = boardDots!.list.map(({ x, y }) => ({ x, y: -y }));
    expect(takes(together(small, "dots-face"), face, 2.2)).toBe(false);
    const tuners = small.model.instrument.tuners.tuners.map(({ along, y }) => ({ x: along, y }));
    expect(takes(together(small, "drill-tuners"), tuners, 3.2)).toBe(false);
    expect(takes(together(made, "drill-tuners"), tuners, 3.2)).toBe(true);
  });
});

/** A drill plate laid on the neck's own axes: its x along the head's face or along the neck, its upper face down on the wood. */
function laid(jig: Solid, frame: Frame): Solid {
  return { kind: "place", solid: jig, frame };
}

describe.each(looked)("the drill plates of $design with $count strings", ({ spec }) => {
  const made = madeOf(() => kernel, spec());
  const { instrument, sawing } = made.model;
  const of = (id: string) => made.model.spec.values[id]!.value;

  it("for the tuners lie on the head with their lips round it, the pilots in the tuners' holes' middles", () => {
    const turn = (of("head.angle") * Math.PI) / 180;
    const face = { nutThickness: of("nut.thickness"), angle: of("head.angle") };
    const start = onHead(face, 0, 8);
    const frame: Frame = {
      origin: { x: start.x, y: 0, z: start.z },
      u: { x: -Math.cos(turn), y: 0, z: -Math.sin(turn) },
      v: { x: 0, y: 1, z: 0 },
      w: { x: Math.sin(turn), y: 0, z: -Math.cos(turn) },
    };
    const jig = together(made, "drill-tuners");
    expect(inBoth(kernel, laid(jig, frame), instrument.neckSolid)).toBeLessThan(1);
    // A millimetre aside the lips run into the head.
    const aside = { ...frame, origin: { ...frame.origin, y: 1 } };
    expect(inBoth(kernel, laid(jig, aside), instrument.neckSolid)).toBeGreaterThan(5);
    const holes = instrument.tuners.tuners.map(({ along, y }) => ({ x: along, y }));
    expect(takes(jig, holes, 3)).toBe(true);
    expect(takes(jig, holes, 4)).toBe(false);
  });

  it("for the index pins stand on the blank's ends and on the nut's line", () => {
    const { place } = sawing;
    const pin = (id: string) => instrument.neckPins.find((one) => one.id === id)!;
    const head = together(made, "drill-index-head");
    const tail = together(made, "drill-index-tail");
    expect(takes(head, [{ x: pin("head").x - place.minX, y: 0 }], 3.1)).toBe(true);
    expect(takes(tail, [{ x: place.maxX - pin("tail").x, y: 0 }], 3.1)).toBe(true);
    // The blank's own width goes between the lips, and no more than the slide clearance wider.
    const sides = hits(made.meshOf("drill-index-head"), [5, -200, 10], [0, 1, 0]);
    expect(sides[2]! - sides[1]! - instrument.neckBlank.width).toBeCloseTo(2 * printed.clearance.slide, 3);
    const under = [pin("upper"), pin("lower")].map(({ x, y }) => ({ x, y: -y }));
    expect(takes(together(made, "drill-index-board"), under, 3.1)).toBe(true);
  });
});

describe("a drill plate of a left-hand order", () => {
  it("is turned over, with its holes and their places", () => {
    const [right, left] = ["right", "left"].map((hand) =>
      madeOf(() => kernel, specOf("mallow", 5, "", { hand: hand as "left" })),
    );
    const offset = right!.model.spec.values["pin.upper.offset"]!.value;
    expect(offset).not.toBe(0);
    const at = right!.model.instrument.neckPins.find(({ id }) => id === "upper")!.x;
    expect(takes(together(right!, "drill-index-board"), [{ x: at, y: -offset }], 3.1)).toBe(true);
    expect(takes(together(left!, "drill-index-board"), [{ x: at, y: offset }], 3.1)).toBe(true);
    expect(takes(together(left!, "drill-index-board"), [{ x: at, y: -offset }], 3.1)).toBe(false);
  });
});
