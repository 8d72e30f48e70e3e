import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { bridgeFlats } from "../../src/drawing/flat/bridge-flats.ts";
import { titled } from "../../src/drawing/flat/titled.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { everyCount, specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Box = readonly [layer: string, closed: boolean, minX: number, maxX: number, minY: number, maxY: number];
type Read = {
  readonly errors: number;
  readonly foot: number;
  readonly top: number;
  readonly height: number;
  readonly tilt: number;
  readonly boxes: readonly Box[];
  readonly texts: readonly string[];
};
type Report = { readonly hand: string; readonly design: string; readonly of: (id: string) => number };

const script = join(import.meta.dirname, "read_bridge.py");

describeWith(
  ezdxf,
  "the bridge's place and side of every design at every count, in both hands, opened by ezdxf",
  () => {
    let out = "";
    let read: readonly (readonly [Report, Read])[] = [];

    beforeAll(() => {
      out = mkdtempSync(join(tmpdir(), "bridge-"));
      const reports = everyCount.map(({ design, count }, i): readonly [string, Report] => {
        const hand = i % 2 === 0 ? "right" : "left";
        const store = memoryStore();
        const model = modelOf(specOf(design, count, "", { hand }), store);
        const folder = join(out, `${design}-${count}`);
        mkdirSync(folder);
        for (const file of bridgeFlats) {
          const seenFrom = typeof file.seenFrom === "string" ? file.seenFrom : file.seenFrom[hand];
          const title = {
            order: "T-1",
            part: "bridge",
            fingerprint: "0".repeat(12),
            hand,
            seenFrom,
          } as const;
          const flat = titled(file.of(model, store).value, { ...title, overruled: [] });
          writeFileSync(join(folder, `${file.name}.dxf`), dxfText(flat));
        }
        const dimensions = new Map(dimensionsOf(model.spec).map((one) => [one.id, one]));
        return [folder, { hand, design, of: (id: string) => dimensions.get(id)!.of(model) }];
      });
      const found = python(script, ...reports.map(([folder]) => folder)) as Record<string, Read>;
      read = reports.map(([folder, report]) => [report, found[folder]!] as const);
    });
    afterAll(() => rmSync(out, { recursive: true, force: true }));

    it("have no errors, and the tilt and the taper that the report names, within 0.001", () => {
      expect(read).toHaveLength(everyCount.length);
      for (const [{ of }, { errors, tilt, foot, top, height }] of read) {
        expect(errors).toBe(0);
        expect(Math.abs(tilt - of("bridge.tilt"))).toBeLessThan(0.001);
        expect(Math.abs(foot - of("bridge.foot.thickness"))).toBeLessThan(0.001);
        expect(Math.abs(top - of("bridge.top.thickness"))).toBeLessThan(0.001);
        expect(Math.abs(height - of("bridge.height"))).toBeLessThan(0.001);
      }
    });

    it("have the feet where the report's middle and width put them", () => {
      for (const [{ of }, { boxes }] of read) {
        const feet = boxes.filter(([layer, closed]) => layer === "SCRIBE" && closed);
        expect(feet).toHaveLength(2);
        for (const [, , minX, maxX] of feet) {
          expect(Math.abs((minX + maxX) / 2 - of("bridge.foot.x"))).toBeLessThan(0.001);
          expect(Math.abs(maxX - minX - of("bridge.foot.thickness"))).toBeLessThan(0.001);
        }
        const reach = Math.max(...feet.flatMap(([, , , , minY, maxY]) => [-minY, maxY]));
        expect(Math.abs(2 * reach - of("bridge.foot.width"))).toBeLessThan(0.001);
      }
    });

    it("have a saddle's screws at their places and a cradle's recess at its, on the layers that say how wide or deep", () => {
      const seen = new Set<string>();
      for (const [{ of, design }, { boxes, texts }] of read) {
        const sunk = boxes.filter(([layer]) => /^(BORE|RECESS)-/.test(layer));
        seen.add(design);
        if (design === "mallow") {
          expect(sunk.map(([layer]) => layer)).toEqual(["BORE-2_50", "BORE-2_50"]);
          const across = sunk.map(([, , , , minY, maxY]) => Math.abs(minY + maxY) / 2);
          for (const y of across) expect(Math.abs(y - 0.36 * of("bridge.foot.width"))).toBeLessThan(0.001);
          expect(
            texts.filter((text) => text.includes(`DEEP ${of("saddle.screw.depth").toFixed(2)}`)),
          ).toHaveLength(2);
        } else if (design === "thrift") {
          const [[layer, closed, minX, maxX, minY, maxY]] = sunk as [Box];
          expect(sunk).toHaveLength(1);
          expect([layer, closed]).toEqual([
            `RECESS-${of("cradle.depth").toFixed(2).replace(".", "_")}`,
            true,
          ]);
          expect(Math.abs(maxX - minX - of("cradle.length"))).toBeLessThan(0.001);
          expect(Math.abs(maxY - minY - of("bridge.foot.width"))).toBeLessThan(0.001);
        } else expect(sunk).toEqual([]);
      }
      expect([...seen].sort()).toEqual(["bulrush", "mallow", "sedge", "thrift"]);
    });

    it("say from where they are seen", () => {
      for (const [{ hand }, { texts }] of read) {
        expect(texts.some((text) => text.includes("SEEN FROM THE CORE'S FRONT"))).toBe(true);
        expect(texts.some((text) => text.startsWith(`${hand.toUpperCase()} HAND`))).toBe(true);
      }
    });
  },
);
