import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { makePacks } from "../../src/pack/make.ts";
import { memoryStore } from "../../src/step/store.ts";
import { ordersFolder } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Read = { readonly errors: number; readonly middles: readonly (readonly [string, number])[] };

const script = join(import.meta.dirname, "read_frets.py");

describeWith(ezdxf, "the slots of SY-0436's fingerboard, opened by ezdxf", () => {
  it("stand within 0.001 mm of the formula, on one recess layer", async () => {
    const out = mkdtempSync(join(tmpdir(), "frets-"));
    try {
      const orders = [join(ordersFolder, "SY-0436.yaml")];
      const made = await makePacks({ orders, out, only: ["fingerboard"], options: {} }, memoryStore());
      if (!made.ok) throw new Error("the sample can't be made");
      const { errors, middles } = python(
        script,
        join(made.value[0]!.folder, "outlines", "fingerboard.dxf"),
      ) as Read;
      expect(errors).toBe(0);
      expect(middles).toHaveLength(24);
      for (const [i, [layer, x]] of middles.entries()) {
        expect(layer).toBe("RECESS-1_90");
        expect(Math.abs(x - 328 * (1 - 2 ** (-(i + 1) / 12)))).toBeLessThan(0.001);
      }
    } finally {
      rmSync(out, { recursive: true, force: true });
    }
  });
});
