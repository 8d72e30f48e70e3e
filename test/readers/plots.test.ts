import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { plotFiles } from "../../src/drawing/plot/plots.ts";
import { plotPackFile } from "../../src/pack/plot-pack-file.ts";
import { usualTension } from "../../src/physics/usual-tension.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { everyCount } from "../samples.ts";
import { type BarsRead, type BowRead, differences, type Panel } from "./plot-read.ts";
import { every, hands, numbersOf } from "./plotted.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Read = {
  readonly words: readonly string[];
  readonly unreadable?: string;
  readonly panels: readonly Panel[];
} & BarsRead;
type Faults = { readonly faults: readonly (readonly string[])[]; readonly texts: readonly unknown[] };

describeWith(ezdxf, "the plots of every design, count and hand, read by xml.etree and shapely", () => {
  let folder = "";
  const texts = new Map<string, string>();
  const models = new Map<string, Model>();
  let read: Record<string, Read> = {};
  let faults: Record<string, Faults> = {};

  /** What a reader finds in drawings that are named for their order and plot. */
  function readBy<Found>(script: string, drawings: ReadonlyMap<string, string>): Record<string, Found> {
    const files = [...drawings].map(([name, text]) => {
      const file = join(folder, `${name}.svg`);
      writeFileSync(file, text);
      return [name, file] as const;
    });
    const found = python(join(import.meta.dirname, script), ...files.map(([, file]) => file));
    return Object.fromEntries(files.map(([name, file]) => [name, (found as Record<string, Found>)[file]!]));
  }

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "plots-"));
    for (const { id, spec } of every) {
      const store = memoryStore();
      const model = modelOf(spec, store);
      models.set(id, model);
      for (const file of plotFiles)
        texts.set(`${id}.${file.name}`, String(plotPackFile(file, model, store).content));
    }
    read = readBy("read_plots.py", texts);
    faults = readBy("read_sheet.py", texts);
  }, 120_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("have no text on another or on any line, nothing outside the frame and no small letters", () => {
    let counted = 0;
    for (const [name, found] of Object.entries(faults)) {
      expect({ name, faults: found.faults }).toEqual({ name, faults: [] });
      counted += found.texts.length;
    }
    expect(Object.keys(faults)).toHaveLength(every.length * plotFiles.length);
    expect(counted).toBeGreaterThan(every.length * plotFiles.length * 15);
  });

  it("say whose they are: the order, its voice and its count, the hand and the plot's own fingerprint", () => {
    for (const { id, spec } of every) {
      for (const file of plotFiles) {
        const { words, unreadable } = read[`${id}.${file.name}`]!;
        expect(unreadable, `${id} ${file.name}`).toBeUndefined();
        expect(words).toContain(file.heading);
        expect(words).toContain(`ORDER ${spec.order}`);
        const whose = `${spec.voice.toUpperCase()}, ${spec.count} STRINGS   ${spec.hand.toUpperCase()} HAND`;
        expect(words.some((text) => text.startsWith(`${whose}   FINGERPRINT `))).toBe(true);
      }
    }
  });

  it("raise a bar to each string's tension, and mark what is usual beside it", () => {
    for (const { id, spec } of every) {
      const number = numbersOf(models.get(id)!);
      const { bars, ranges } = read[`${id}.tension`]!;
      expect(bars.map(({ name }) => name)).toEqual(spec.strings.map(({ name }) => name));
      for (const { name, from, to, says, hatched } of bars) {
        const tension = number(`string.${name}.tension`);
        expect(Math.abs(to - tension), `${id} ${name}`).toBeLessThan(0.001);
        expect(Math.abs(from)).toBeLessThan(0.001);
        expect(says).toEqual([`${tension.toFixed(1)} N`]);
        expect(hatched).toBe(true);
      }
      const usual = spec.strings.map(({ name, semitones }) => {
        return { name, ...usualTension(spec.voice, semitones)! };
      });
      expect(ranges.map(({ name }) => name)).toEqual(usual.map(({ name }) => name));
      for (const [i, { least, most, says }] of ranges.entries()) {
        expect(least).toBeCloseTo(usual[i]!.least, 3);
        expect(most).toBeCloseTo(usual[i]!.most, 3);
        expect(says).toEqual([`${usual[i]!.least} TO ${usual[i]!.most} N`]);
      }
    }
  });

  it("mark for a violin's and a cello's strings what the trade notes have for them", () => {
    const told = (id: string) => read[`${id}.tension`]!.ranges.map(({ says }) => says[0]);
    const violin = ["70 TO 82 N", "50 TO 62 N", "40 TO 52 N", "42 TO 50 N", "42 TO 60 N"];
    expect(told("sedge-5-right")).toEqual(violin);
    expect(told("bulrush-4-left")).toEqual(["150 TO 180 N", "125 TO 150 N", "115 TO 140 N", "100 TO 140 N"]);
  });

  it("stand each string's load on the bridge, and its lean beside it, with both sums in words", () => {
    for (const { id, spec } of every) {
      const number = numbersOf(models.get(id)!);
      const { bars, words } = read[`${id}.bridge-load`]!;
      const wanted = spec.strings.flatMap(({ name }) => [
        { name, hatched: true, force: number(`string.${name}.load`) },
        { name, hatched: false, force: number(`string.${name}.lean`) },
      ]);
      expect(bars).toHaveLength(wanted.length);
      for (const [i, { name, hatched, to, says }] of bars.entries()) {
        expect({ name, hatched }).toEqual({ name: wanted[i]!.name, hatched: wanted[i]!.hatched });
        expect(Math.abs(to - wanted[i]!.force), `${id} ${name}`).toBeLessThan(0.001);
        expect(says).toHaveLength(1);
        expect(Math.abs(Number.parseFloat(says[0]!) - wanted[i]!.force)).toBeLessThan(0.0501);
      }
      const sums = words.map((text) => /LOAD (-?[\d.]+) N, LEAN (-?[\d.]+) N/.exec(text)).find(Boolean)!;
      expect(Math.abs(Number(sums[1]) - number("bridge.load"))).toBeLessThan(0.0501);
      expect(Math.abs(Number(sums[2]) - number("bridge.lean"))).toBeLessThan(0.0501);
    }
  });

  it("lead each string over the board by the clearances that the report has, and on to the bridge", () => {
    for (const { id, spec } of every) {
      const number = numbersOf(models.get(id)!);
      const [long, board] = [number("string.length"), number("fingerboard.length")];
      const crown = spec.frets === null ? 0 : number("fret.crown.height");
      const { panels } = read[`${id}.string-heights`]!;
      expect(panels.map(({ name }) => name)).toEqual(spec.strings.map(({ name }) => name));
      for (const [i, panel] of panels.entries()) {
        const share = i / (panels.length - 1);
        const between = (where: "nut" | "end") =>
          number(`string.clearance.${where}.high`) * (1 - share) +
          number(`string.clearance.${where}.low`) * share;
        const [nut, end] = [between("nut"), between("end")];
        const near = (found: number, wanted: number) =>
          expect(Math.abs(found - wanted), `${id} ${panel.name}`).toBeLessThan(0.001);
        near(panel.length, long);
        near(panel.board, board);
        near(panel.middle.x, board / 2);
        near(panel.nut, nut + crown);
        near(panel.end, end + crown);
        near(panel.bridge, nut + crown + ((end - nut) * long) / board);
        const halfway = panel.middle.string - panel.middle.board - crown;
        const wanted = [nut, halfway, end, panel.bridge];
        expect(panel.says).toHaveLength(4);
        for (const [k, said] of panel.says.entries())
          expect(Math.abs(said - wanted[k]!), `${id} ${panel.name}`).toBeLessThan(0.0051);
        expect(Math.abs(panel.hollow + panel.middle.board)).toBeLessThan(0.0051);
      }
      const [high, low] = [panels[0]!, panels.at(-1)!].map(({ middle }) => -middle.board);
      expect(high).toBeCloseTo(number("fingerboard.scoop.high"), 3);
      expect(low).toBeCloseTo(number("fingerboard.scoop.low"), 3);
    }
  });

  it("draw the bow's lines by the tilts that the report has, and each inner string's range", () => {
    for (const { id, spec } of every) {
      const number = numbersOf(models.get(id)!);
      const found = read[`${id}.bow-angles`] as unknown as BowRead;
      expect(differences(found), id).toEqual([]);
      const names = spec.strings.map(({ name }) => name);
      const side = spec.hand === "right" ? 1 : -1;
      const drawn = (touches: readonly string[]) => {
        const line = found.lines.find((each) => each.touches.join() === touches.join())!;
        return line.degrees * side * (line.falls === "right" ? 1 : -1);
      };
      const near = (degrees: number, wanted: number) =>
        expect(Math.abs(degrees - wanted), id).toBeLessThan(0.001);
      expect(found.lines).toHaveLength(names.length + 1);
      expect(found.ranges).toHaveLength(names.length - 2);
      for (const [i, { name, degrees }] of found.ranges.entries()) {
        expect(name).toBe(names[i + 1]);
        near(degrees, number(`bow.${name}.angle`));
        near(drawn([names[i]!, name]), number(`bow.${name}.tilt.treble`));
        near(drawn([name, names[i + 2]!]), number(`bow.${name}.tilt.bass`));
      }
      near(drawn([names[0]!]), number("bow.tilt.treble"));
      near(drawn([names.at(-1)!]), -number("bow.tilt.bass"));
      for (const { name, x } of found.rings) {
        const wide = number(`string.${name}.offset.bridge`) - number(`string.${names[0]}.offset.bridge`);
        expect(x - found.rings[0]!.x).toBeCloseTo(side * found.scale * wide, 3);
      }
    }
  });

  it("stand each fret at its place and as high as its crown", () => {
    for (const { id, spec } of every) {
      const number = numbersOf(models.get(id)!);
      for (const { frets } of read[`${id}.string-heights`]!.panels) {
        expect(frets).toHaveLength(spec.frets?.count ?? 0);
        for (const [k, [x, high]] of frets.entries()) {
          expect(Math.abs(x - number(`fret.${k + 1}`))).toBeLessThan(0.001);
          expect(Math.abs(high - number("fret.crown.height"))).toBeLessThan(0.001);
        }
      }
    }
  });

  it("of a left-hand order are the same where they are no picture of the instrument", () => {
    const lines = (text: string) => text.split("\n").filter((line) => line.startsWith("<path"));
    for (const { design, count } of everyCount) {
      for (const name of ["tension", "bridge-load", "string-heights"]) {
        const [right, left] = hands.map((hand) => texts.get(`${design}-${count}-${hand}.${name}`)!);
        expect(lines(left!)).toEqual(lines(right!));
      }
    }
  });

  it("have the same bytes from a fresh store and from one that drew others", () => {
    const store = memoryStore();
    for (const { id, spec } of [...every].reverse()) {
      const model = modelOf(spec, store);
      for (const file of plotFiles)
        expect(plotPackFile(file, model, store).content, id).toBe(texts.get(`${id}.${file.name}`));
    }
  });

  /** A drawing with a piece of it changed; the piece must stand in it. */
  function planted(
    name: string,
    from: RegExp,
    to: string | ((...found: string[]) => string),
  ): Map<string, string> {
    const text = texts.get(name)!;
    const changed = text.replace(from, to as string);
    expect(changed).not.toBe(text);
    return new Map([[`planted.${name.split(".")[1]}`, changed]]);
  }

  it("would show a bar that is 0.1 N too high", () => {
    const tall = planted(
      "sedge-5-right.tension",
      /(data-weight="bar".*?L[\d.]+ [\d.-]+L)([\d.]+) (-[\d.]+)L([\d.]+) (-[\d.]+)/,
      (_, start, x1, y1, x2, y2) => {
        const up = (y: string) => String(Number(y) - 0.13);
        return `${start}${x1} ${up(y1!)}L${x2} ${up(y2!)}`;
      },
    );
    const { bars } = readBy<Read>("read_plots.py", tall)["planted.tension"]!;
    const tension = numbersOf(models.get("sedge-5-right")!)("string.E5.tension");
    expect(bars[0]!.to - tension).toBeGreaterThan(0.05);
  });

  it("would show a number that is another's, and a tick that is off its scale", () => {
    const said = planted("sedge-5-right.tension", />75\.0 N</, ">76.0 N<");
    expect(readBy<Read>("read_plots.py", said)["planted.tension"]!.bars[0]!.says).toEqual(["76.0 N"]);
    const off = planted("sedge-5-right.tension", />40</, ">41<");
    expect(readBy<Read>("read_plots.py", off)["planted.tension"]!.unreadable).toContain("off its scale");
  });

  it("would show a string that is led too high, and a hollow that is filled", () => {
    const led = planted(
      "sedge-5-right.string-heights",
      /(data-weight="curve".*?M[\d.]+ -)([\d.]+)/,
      (_, start, y) => `${start}${Number(y) + 0.3}`,
    );
    const first = readBy<Read>("read_plots.py", led)["planted.string-heights"]!.panels[0]!;
    expect(first.nut).toBeGreaterThan(0.76);
    const flat = planted(
      "sedge-5-right.string-heights",
      /(data-weight="outline".*?M[\d.]+ (-[\d.]+))(L.*?)"/,
      (_, start, y, rest) => `${start}${rest!.replace(/ -[\d.]+/g, ` ${y}`)}"`,
    );
    const filled = readBy<Read>("read_plots.py", flat)["planted.string-heights"]!.panels[0]!;
    expect(Math.abs(filled.middle.board)).toBeLessThan(0.001);
    expect(filled.hollow).toBe(0.25);
  });

  it("would show a text on another, one outside the frame, and small letters", () => {
    const fault = (from: RegExp, to: string) => {
      const drawing = planted("sedge-5-right.tension", from, to);
      return readBy<Faults>("read_sheet.py", drawing)["planted.tension"]!.faults.map(([kind]) => kind);
    };
    const place = / x="([\d.]+)" y="(-[\d.]+)"[^>]*>75\.0 N</.exec(texts.get("sedge-5-right.tension")!)!;
    expect(fault(/x="[\d.]+" y="-[\d.]+"([^>]*>55\.0 N<)/, `x="${place[1]}" y="${place[2]}"$1`)).toContain(
      "text on text",
    );
    expect(fault(/x="[\d.]+"([^>]*>55\.0 N<)/, 'x="1"$1')).toContain("outside");
    expect(fault(/font-size="3\.90625"([^>]*>55\.0 N<)/, 'font-size="3"$1')).toContain("small");
  });
});
