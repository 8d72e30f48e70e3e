import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Flat } from "../../src/drawing/flat/flat.ts";
import { flatFiles } from "../../src/drawing/flat/flats.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import { sides } from "../../src/order/side.ts";
import type { Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { everyCount, specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type At = readonly [number, number];
type Ring = {
  readonly closed: boolean;
  readonly valid: boolean;
  readonly area: number;
  readonly longest: readonly [At, At];
};
type Read = {
  readonly errors: number;
  readonly rings: { readonly [layer in "OUTER-EDGE" | "PART"]: readonly Ring[] };
  readonly bores: readonly (readonly [number, number, string])[];
  readonly scribed: readonly (readonly At[])[];
};

describeWith(ezdxf, "every wing's machine files, opened by ezdxf", () => {
  const folder = mkdtempSync(join(tmpdir(), "wings-"));
  const specs: Spec[] = everyCount
    .filter(({ design }) => design !== "thrift")
    .map(({ design, count }, i) => specOf(design, count, "", { hand: i % 2 === 0 ? "right" : "left" }));
  const files = specs.flatMap((spec) =>
    sides.flatMap((side) => [`wing-${side}`, `joint-${side}`].map((name) => ({ spec, side, name }))),
  );
  let read: Read[] = [];
  let spoilt: Read[] = [];

  const written = (name: string, flat: Flat) => {
    const file = join(folder, `${name}.dxf`);
    writeFileSync(file, dxfText(flat));
    return file;
  };

  beforeAll(() => {
    const flats = files.map(({ spec, name }) => {
      const store = memoryStore();
      return flatFiles.find((file) => file.name === name)!.of(modelOf(spec, store), store).value;
    });
    const paths = flats.map((flat, i) => written(`${i}`, flat));
    const moved = flats[0]!.shapes.map((shape) => ({
      ...shape,
      path: {
        ...shape.path,
        points: shape.path.points.map((p) => (Math.hypot(p.x, p.y) < 1e-6 ? { ...p, y: 0.05 } : p)),
      },
    }));
    paths.push(written("spoilt", { ...flats[0]!, shapes: moved }));
    const all = python(join(import.meta.dirname, "read_wings.py"), ...paths) as Read[];
    [read, spoilt] = [all.slice(0, -1), all.slice(-1)];
  }, 60_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const numbers = (spec: Spec) => {
    const model = modelOf(spec, memoryStore());
    return new Map(
      dimensionsOf(spec)
        .filter(({ id }) => id.startsWith("wing."))
        .map(({ id, of }) => [id, of(model)]),
    );
  };

  /** How the joint line of a wing's outline turns from the wing's own axis, and how far the scribed back arris is from it. */
  const jointOf = ({ rings, scribed }: Read) => {
    const [a, b] = rings["OUTER-EDGE"][0]!.longest;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const turn = (Math.atan2(Math.abs(b[1] - a[1]), Math.abs(b[0] - a[0])) * 180) / Math.PI;
    const from = scribed[0]![0]!;
    const off = Math.abs((b[0] - a[0]) * (from[1] - a[1]) - (b[1] - a[1]) * (from[0] - a[0])) / length;
    return { length, turn, off };
  };

  it("are clean and closed, with a wing's outline and a joint's face each once", () => {
    for (const [i, { errors, rings }] of read.entries()) {
      expect(errors).toBe(0);
      const ring = files[i]!.name.startsWith("wing") ? rings["OUTER-EDGE"] : rings.PART;
      expect(ring).toHaveLength(1);
      expect(ring[0]).toMatchObject({ closed: true, valid: true });
    }
  });

  it("hold the joint line's length and mitre, and the back arris as far off as the bevel puts it", () => {
    for (const [i, { spec, side, name }] of files.entries()) {
      if (!name.startsWith("wing")) continue;
      const of = numbers(spec);
      const { length, turn, off } = jointOf(read[i]!);
      expect(Math.abs(length - of.get(`wing.${side}.joint.length`)!)).toBeLessThan(0.001);
      expect(Math.abs(turn - of.get(`wing.${side}.mitre`)!)).toBeLessThan(0.001);
      const bevel = (of.get(`wing.${side}.bevel`)! * Math.PI) / 180;
      expect(Math.abs(off - of.get(`wing.${side}.thickness`)! * Math.tan(bevel))).toBeLessThan(0.001);
    }
  });

  it("hold the joint's face with its area and its pins' holes where the report has them", () => {
    for (const [i, { spec, side, name }] of files.entries()) {
      if (!name.startsWith("joint")) continue;
      const of = numbers(spec);
      const pins = spec.wings![side].pins;
      const bored = pins.length * Math.PI * (of.get(`wing.${side}.pin.hole`)! / 2) ** 2;
      expect(
        Math.abs(read[i]!.rings.PART[0]!.area - bored - of.get(`wing.${side}.joint.area`)!),
      ).toBeLessThan(0.01);
      for (const { id } of pins) {
        const [along, down] = [
          of.get(`wing.${side}.pin.${id}.along`)!,
          of.get(`wing.${side}.pin.${id}.down`)!,
        ];
        const off = read[i]!.bores.map(([x, y]) => Math.hypot(Math.abs(x) - along, y + down));
        expect(Math.min(...off)).toBeLessThan(0.001);
      }
    }
  });

  it("tell a joint line that is 0.05 off at one end", () => {
    const [right, wrong] = [jointOf(read[0]!), jointOf(spoilt[0]!)];
    expect(Math.abs(wrong.turn - right.turn)).toBeGreaterThan(0.005);
  });
});
