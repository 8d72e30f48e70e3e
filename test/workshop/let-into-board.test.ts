import { beforeAll, describe, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import { meshProblem } from "../../src/geometry/solid/mesh-problem.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../src/geometry/solid/triangle-mesh.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { meshed } from "../meshed.ts";
import { ownBoard } from "../own-board.ts";
import { hits } from "../ray.ts";
import { frettedSpec, specOf } from "../samples.ts";
import { bareBoard, fine, numbers } from "./bare-board.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const meshOf = (solid: Solid, chord: number): TriangleMesh => meshed(kernel, solid, chord);

describe("what is let into a board", () => {
  /** How deep, square to the section's circle, a slot's floor lies at y across it. */
  function slotDepth(model: Model, made: TriangleMesh, x: number, y: number): number {
    const own = ownBoard(model.spec, numbers(model));
    const floor = 50 - hits(made, [x, y, 50], [0, 0, -1])[0]!;
    const { y: my, z: mz } = own.middle(x);
    return own.radius(x) - Math.hypot(y - my, floor - mz);
  }

  it.each(["blind", "through"] as const)(
    "slots that are %s follow the arc, as deep everywhere, and end where they should",
    (slots) => {
      const base = frettedSpec(5, "", 12);
      const spec: Spec = { ...base, frets: { ...base.frets!, slots } };
      const model = modelOf(spec, memoryStore());
      const all = numbers(model);
      const made = meshOf(model.instrument.boardSolid, 0.002);
      expect(meshProblem(made)).toBeUndefined();
      const own = ownBoard(spec, all);
      for (const n of [1, 7, 12]) {
        const x = all[`fret.${n}`]!;
        const half = own.half(x) - (slots === "blind" ? all["fret.slot.edge"]! : 0);
        for (const share of [-0.97, -0.5, 0.01, 0.5, 0.97])
          expect(slotDepth(model, made, x + 0.03, share * half)).toBeCloseTo(all["fret.slot.depth"]!, 2);
        // Beside the slot and, if it is blind, beyond its end stands the surface.
        const aside = all["fret.slot.width"]! / 2 + 0.02;
        expect(slotDepth(model, made, x + aside, 1)).toBeCloseTo(0, 2);
        if (slots === "blind") expect(slotDepth(model, made, x, half + 0.05)).toBeCloseTo(0, 2);
        // From the side: the wall is open over a through slot's floor only.
        const seen = hits(made, [x, -100, all["fingerboard.edge"]! - 0.5], [0, 1, 0])[0]!;
        if (slots === "blind") expect(seen).toBeCloseTo(100 - own.half(x), 2);
        else expect(seen).toBeGreaterThan(100 - own.half(x) + 0.2);
      }
      const ends = Array.from({ length: 12 }, (_, i) => i + 1).flatMap((n) => {
        const x = all[`fret.${n}`]!;
        const half = own.half(x) - (slots === "blind" ? all["fret.slot.edge"]! : 0) - 0.001;
        return [-half, half].map((y) => 50 - hits(made, [x, y, 50], [0, 0, -1])[0]!);
      });
      expect(all["fret.slot.left"]).toBeCloseTo(Math.min(...ends), 2);
    },
  );

  it.each(["blind", "through"] as const)("takes from it what its own sizes say, with slots %s", (slots) => {
    const base = frettedSpec(7);
    const spec: Spec = { ...base, frets: { ...base.frets!, slots } };
    const model = modelOf(spec, memoryStore());
    const all = numbers(model);
    const own = ownBoard(spec, all);
    const short = slots === "blind" ? all["fret.slot.edge"]! : 0;
    let taken = 0;
    for (let n = 1; n <= 24; n++) {
      const x = all[`fret.${n}`]!;
      const [half, { y: my, z: mz }] = [own.half(x) - short, own.middle(x)];
      const count = 400;
      for (let i = 0; i < count; i++) {
        const y = half * ((2 * (i + 0.5)) / count - 1);
        const floor = mz + Math.sqrt((own.radius(x) - all["fret.slot.depth"]!) ** 2 - (y - my) ** 2);
        taken += (own.top(x, y) - floor) * ((2 * half) / count) * all["fret.slot.width"]!;
      }
    }
    // Where the dots lie and how deep they go is held elsewhere; here it is that they are whole, and nothing else is taken.
    const r = all["dot.size"]! / 2;
    for (const { x, y, floor } of model.instrument.boardDots!.list) {
      const count = 40;
      for (let i = 0; i < count; i++)
        for (let k = 0; k < count; k++) {
          const [out, turn] = [r * Math.sqrt((i + 0.5) / count), (2 * Math.PI * k) / count];
          const top = own.top(x + out * Math.cos(turn), y + out * Math.sin(turn));
          taken += ((top - floor) * Math.PI * r * r) / count ** 2;
        }
    }
    taken += 10 * all["side-dot.depth"]! * Math.PI * (all["side-dot.size"]! / 2) ** 2;
    const volume = (made: TriangleMesh) => meshMeasures(made).volume;
    const found = volume(bareBoard(kernel, model)) - volume(meshOf(model.instrument.boardSolid, fine));
    expect(taken).toBeGreaterThan(1000);
    expect(Math.abs(found / taken - 1)).toBeLessThan(0.001);
  });

  it("dots are bores of their size, as deep as set under the lowest place over them; two at the octave", () => {
    const model = modelOf(frettedSpec(5), memoryStore());
    const all = numbers(model);
    const made = meshOf(model.instrument.boardSolid, 0.002);
    const own = ownBoard(model.spec, all);
    const r = all["dot.size"]! / 2;
    const dots = [
      ...[3, 5, 7, 9, 15, 17, 19, 21].map((n) => [n, 0] as const),
      ...[12, 24].flatMap((n) => [-1, 1].map((side) => [n, (side * all["dot.apart"]!) / 2] as const)),
    ];
    for (const [n, y] of dots) {
      const x = (all[`fret.${n}`]! + all[`fret.${n - 1}`]!) / 2;
      const rim = Array.from({ length: 360 }, (_, i) => (i * Math.PI) / 180);
      const lowest = Math.min(...rim.map((a) => own.top(x + r * Math.cos(a), y + r * Math.sin(a))));
      for (const [dx, dy] of [
        [0.1, 0.05],
        [0, r - 0.02],
        [0.02 - r, 0],
      ] as const)
        expect(50 - hits(made, [x + dx, y + dy, 50], [0, 0, -1])[0]!).toBeCloseTo(
          lowest - all["dot.depth"]!,
          3,
        );
      const beside = 50 - hits(made, [x, y + r + 0.02, 50], [0, 0, -1])[0]!;
      expect(beside).toBeCloseTo(own.top(x, y + r + 0.02), 2);
    }
  });

  it.each<[string, Spec, boolean]>([
    ["a fretted board midway between frets", frettedSpec(6), true],
    ["a fretless board at the note itself", specOf("sedge", 5), false],
  ])("side dots of %s are bored square into the bass edge, in its middle", (_, spec, fretted) => {
    const model = modelOf(spec, memoryStore());
    const all = numbers(model);
    const made = meshOf(model.instrument.boardSolid, 0.002);
    const own = ownBoard(spec, all);
    const place = (n: number) => all["string.length"]! * (1 - 2 ** (-n / 12));
    const lean = Math.atan((own.half(own.length) - own.half(0)) / own.length);
    const inward = [Math.sin(lean), Math.cos(lean), 0] as const;
    const numbersOf = spec.dots.side;
    expect(numbersOf.length).toBeGreaterThan(5);
    for (const n of numbersOf) {
      const x = fretted ? (place(n) + place(n - 1)) / 2 : place(n);
      const z = own.top(x, -own.half(x)) / 2;
      const at = (along: number, up: number) => {
        const start = [
          x + along * Math.cos(lean) - 10 * inward[0],
          -own.half(x) - along * Math.sin(lean),
          z + up,
        ];
        const from = [start[0]!, start[1]! - 10 * inward[1], start[2]!] as const;
        return hits(made, from, inward)[0]! - 10;
      };
      const r = all["side-dot.size"]! / 2;
      expect(at(0.01, 0.02)).toBeCloseTo(all["side-dot.depth"]!, 3);
      expect(at(r - 0.02, 0)).toBeCloseTo(all["side-dot.depth"]!, 3);
      expect(at(0, 0.02 - r)).toBeCloseTo(all["side-dot.depth"]!, 3);
      expect(at(r + 0.02, 0)).toBeCloseTo(0, 3);
      expect(at(0, r + 0.02)).toBeCloseTo(0, 3);
    }
  });

  it("dots that a board has no frets for are left out, and their drawings with them", () => {
    const [two, twelve, bare] = [frettedSpec(5, "", 2), frettedSpec(5, "", 12), specOf("thrift", 5)].map(
      (spec) => {
        const { boardDots, boardSideDots } = modelOf(spec, memoryStore()).instrument;
        const drawn = flatsOf(spec).some(({ name }) => name === "fingerboard-edge");
        return [boardDots?.list.map(({ fret }) => fret), boardSideDots?.list.map(({ fret }) => fret), drawn];
      },
    );
    const usual = [3, 5, 7, 9, 12, 15, 17, 19, 21, 24];
    expect(two).toEqual([undefined, undefined, false]);
    expect(twelve).toEqual([[3, 5, 7, 9, 12, 12], [3, 5, 7, 9, 12], true]);
    expect(bare).toEqual([usual.flatMap((n) => (n % 12 === 0 ? [n, n] : [n])), usual, true]);
  });

  it("an inlay's recess has a flat floor, as deep as set where the surface over it is lowest", () => {
    const model = modelOf(specOf("sedge", 5), memoryStore());
    const all = numbers(model);
    const made = meshOf(model.instrument.boardSolid, 0.002);
    const own = ownBoard(model.spec, all);
    const x = 0.62 * own.length;
    const floors = [-3, 0, 3].map((dx) => 50 - hits(made, [x + dx, 0.3, 50], [0, 0, -1])[0]!);
    expect(Math.max(...floors) - Math.min(...floors)).toBeLessThan(1e-4);
    expect(own.top(x, 0) - floors[1]!).toBeGreaterThan(all["inlay.depth"]!);
    expect(own.top(x, 0) - floors[1]!).toBeLessThan(all["inlay.depth"]! + 0.6);
    const before = x - all["inlay.length"]! / 2 - 0.1;
    expect(50 - hits(made, [before, 0, 50], [0, 0, -1])[0]!).toBeCloseTo(own.top(before, 0), 2);
  });
});
