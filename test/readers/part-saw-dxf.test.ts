import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { makePacks } from "../../src/pack/make.ts";
import { memoryStore } from "../../src/step/store.ts";
import { orderFiles } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Read = {
  readonly errors: readonly string[];
  readonly fixes: readonly string[];
  readonly outside: number;
  readonly lines: number;
  readonly off: number;
  readonly measured: number;
  readonly missed: number;
  readonly joints: readonly { readonly away: number; readonly turn: number }[];
  readonly reliefs: readonly { readonly end: number; readonly start: number; readonly part: number }[];
  readonly bores: readonly { readonly diameter: number; readonly wood: number }[];
  readonly blank: readonly [number, number];
  readonly texts: readonly string[];
};
type Given = {
  readonly file: string;
  readonly part: string;
  readonly wanted: number;
  readonly joint: boolean;
};

const script = join(import.meta.dirname, "read_part_saw.py");
const parts = ["wing-bass", "wing-treble", "body", "fingerboard"] as const;
const readAll = (given: readonly Given[]) => python(script, JSON.stringify(given)) as Record<string, Read>;

describeWith(
  ezdxf,
  "the saw lines of wings, bodies and boards of every sample, opened by ezdxf and measured by shapely",
  () => {
    let out = "";
    let read: Record<string, Read> = {};
    let files: readonly (Given & {
      readonly report: Record<string, number>;
      readonly kerf: number;
      readonly left: number;
    })[] = [];

    beforeAll(async () => {
      out = mkdtempSync(join(tmpdir(), "part-saw-"));
      const made = await makePacks({ orders: orderFiles, out, only: [...parts], options: {} }, memoryStore());
      if (!made.ok) throw new Error("the samples can't be made");
      files = made.value.flatMap(({ folder }) => {
        const { dimensions } = JSON.parse(readFileSync(join(folder, "dimensions.json"), "utf8"));
        const report = Object.fromEntries(dimensions.map(({ id, value }: never) => [id, value]));
        return parts.flatMap((part) => {
          const file = join(folder, "outlines", `${part}-saw.dxf`);
          if (!existsSync(file)) return [];
          const text = readFileSync(file, "utf8");
          const kerf = Number(/KERF ([\d.]+)/.exec(text)![1]);
          const left = Number(/([\d.]+) LEFT OUTSIDE/.exec(text)![1]);
          return [
            { file, part, wanted: left + kerf / 2, joint: part.startsWith("wing"), report, kerf, left },
          ];
        });
      });
      read = readAll(files.map(({ file, part, wanted, joint }) => ({ file, part, wanted, joint })));
    });
    afterAll(() => rmSync(out, { recursive: true, force: true }));

    it("have no error, and lie on a blank of the report's size", () => {
      expect(files.length).toBe(22);
      for (const { file, part, report, left } of files) {
        expect(left, file).toBe(/SY-043[01]/.test(file) ? 3 : 2);
        const { errors, fixes, outside, blank } = read[file]!;
        expect([errors, fixes], file).toEqual([[], []]);
        expect(outside, file).toBe(0);
        const name = part.replace("-", ".");
        expect(blank[0], file).toBeCloseTo(report[`${name}.blank.length`]!, 5);
        expect(blank[1], file).toBeCloseTo(report[`${name}.blank.width`]!, 5);
      }
    });

    it("are the part grown by the allowance and half the kerf, all round but for the joint", () => {
      for (const { file } of files) {
        const { off, measured, missed, lines } = read[file]!;
        expect(lines, file).toBeGreaterThan(0);
        expect(measured, file).toBeGreaterThan(200);
        // shapely's chords stand up to 0.0005 off an arc on either path, and its mitres turn where an arc of ours does.
        expect(off, file).toBeLessThan(0.01);
        expect(missed, file).toBeLessThan(0.01);
      }
    });

    it("have a wing's joint line at its mitre, as far out as its bevel asks", () => {
      let count = 0;
      for (const { file, part, report, wanted, joint } of files) {
        expect(read[file]!.joints).toHaveLength(joint ? 1 : 0);
        if (!joint) continue;
        count += 1;
        const side = part.slice(5);
        const bevel = (report[`wing.${side}.bevel`]! * Math.PI) / 180;
        expect(bevel).toBeGreaterThan(0);
        const [{ away, turn }] = read[file]!.joints as [Read["joints"][number]];
        expect(away, file).toBeCloseTo(wanted / Math.cos(bevel), 4);
        expect(Math.min(Math.abs(turn), 180 - Math.abs(turn)), file).toBeCloseTo(
          Math.abs(report[`wing.${side}.mitre`]!),
          4,
        );
      }
      expect(count).toBe(12);
    });

    it("have relief cuts from the blank's edge to the line, and index pins in the waste", () => {
      let [reliefs, bores] = [0, 0];
      for (const { file, wanted, kerf } of files) {
        for (const relief of read[file]!.reliefs) {
          reliefs += 1;
          expect(relief.end, file).toBeLessThan(0.001);
          expect(relief.start, file).toBeLessThan(1e-5);
          expect(relief.part, file).toBeGreaterThan(wanted - 0.001);
        }
        const own = read[file]!.bores;
        bores += own.length;
        if (own.length > 0) expect(own.map(({ diameter }) => diameter).sort()).toEqual([6, 8]);
        for (const { wood } of own) expect(wood, file).toBeGreaterThan(3 + kerf / 2 - 0.01);
      }
      expect(reliefs).toBeGreaterThan(20);
      expect(bores).toBeGreaterThan(20);
    });

    it("say blank, board, blade, each cut's set-up and the saw's cautions with their sources", () => {
      for (const { file, joint } of files) {
        const all = read[file]!.texts.join("\n");
        for (const told of [
          ...[
            /^BLANK \d+ LONG.*FROM BOARD/m,
            /KERF [\d.]+: LINES ARE ITS MIDDLE/,
            /^GRAIN$/m,
            /UPPER GUIDE AT [\d.]+ AT MOST/,
          ],
          ...[/FINGERS 100 OR MORE/, /ISOLATE .* BLADE/, /HSE WIS31/, /NIOSH 1 MG\/M3/, /LOCAL CODES/],
        ])
          expect(all, file).toMatch(told);
        expect(/TABLE TILTED: A FENCE ON THE LOW SIDE/.test(all), file).toBe(joint);
      }
    });

    it("tell spoilt files: a body's line moved 1 mm, a wing's joint line moved, a rim's line left out", () => {
      const spoil = (part: string, edit: (text: string) => string) => {
        const good = files.find((one) => one.part === part)!;
        const text = readFileSync(good.file, "utf8");
        const changed = edit(text);
        expect(changed).not.toBe(text);
        const file = join(out, `spoilt-${part}.dxf`);
        writeFileSync(file, changed);
        return readAll([{ file, part, wanted: good.wanted, joint: good.joint }])[file]!;
      };
      /** The first vertices of a saw line, moved along y. */
      const shifted = (line: number, by: number) => (text: string) => {
        const entities = text.split(/(?=\n *0\nLWPOLYLINE\n)/);
        const saws = entities.flatMap((entity, i) => (/\n *8\nSAW-LINE\n/.test(entity) ? [i] : []));
        const at = saws[line]!;
        return entities
          .map((entity, i) =>
            i === at
              ? entity.replace(/(\n *20\n)(-?[\d.]+)/g, (_, code, y) => `${code}${Number(y) + by}`)
              : entity,
          )
          .join("");
      };
      expect(spoil("body", shifted(0, 1)).off).toBeGreaterThan(0.9);
      const wing = files.find(({ part }) => part === "wing-treble")!;
      const { joints } = spoil("wing-treble", shifted(0, 1));
      expect(Math.abs((joints[0]?.away ?? 0) - read[wing.file]!.joints[0]!.away)).toBeGreaterThan(0.9);
      expect(spoil("wing-treble", shifted(1, 5)).missed).toBeGreaterThan(1);
    });
  },
);
