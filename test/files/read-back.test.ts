import { describe, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { titled } from "../../src/drawing/flat/titled.ts";
import { expectedOf } from "../../src/files/dxf/expected.ts";
import { readBackDxf } from "../../src/files/dxf/read-back.ts";
import { readDxf } from "../../src/files/dxf/read-dxf.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";

const store = memoryStore();
const model = modelOf(specOf("thrift", 7), store);
const title = {
  order: "T-1",
  fingerprint: "0123456789ab",
  hand: "right",
  seenFrom: "front",
  overruled: [],
} as const;
const drawn = flatsOf(model.spec).map((file) => ({
  name: file.name,
  flat: titled(file.of(model, store).value, { ...title, part: file.part }),
}));
const written = new Map(drawn.map(({ name, flat }) => [name, { flat, text: dxfText(flat) }]));

function readBack(name: string, change: (text: string) => string = (text) => text) {
  const { flat, text } = written.get(name)!;
  const changed = change(text);
  return { touched: changed !== text, ...readBackDxf(changed, expectedOf(flat)) };
}

/** A file's text with the n-th group of a code, counted from 0, replaced. */
function withGroup(text: string, code: number, n: number, replace: (value: string) => string): string {
  const lines = text.split("\n");
  const entities = lines.indexOf("ENTITIES");
  let seen = -1;
  for (let i = entities + 1; i + 1 < lines.length; i += 2) {
    if (Number(lines[i]) === code && ++seen === n) {
      lines[i + 1] = replace(lines[i + 1]!);
      return lines.join("\n");
    }
  }
  return text;
}

/** Where the entity after some place begins: a group 0 that names one, not a value 0. */
function nextEntity(text: string, at: number): number {
  return at + text.slice(at).search(/\n0\n(?=[A-Z])/) + 1;
}

/** A file's text without its n-th entity of a layer. */
function withoutEntity(text: string, layer: string): string {
  const at = text.indexOf(`8\n${layer}\n`, text.indexOf("ENTITIES"));
  const start = text.lastIndexOf("0\nLWPOLYLINE\n", at);
  const end = nextEntity(text, at);
  return text.slice(0, start) + text.slice(end);
}

describe("a machine file read back", () => {
  it.each(drawn.map(({ name }) => name))("%s is what the model has", (name) => {
    const { status, differences, paths } = readBack(name);
    expect(differences).toEqual([]);
    expect(status).toBe("same");
    expect(paths).toBeGreaterThan(10);
  });

  it("has arcs and holes, so that the saboteurs have something to spoil", () => {
    const read = readDxf(written.get("bridge")!.text);
    const paths = read.ok ? read.paths : [];
    expect(paths.some(({ layer }) => layer.startsWith("BORE-"))).toBe(true);
    expect(
      paths.flatMap(({ vertices }) => vertices).filter(({ bulge }) => bulge !== 0).length,
    ).toBeGreaterThan(8);
  });

  it.each(drawn.map(({ name }) => name))(
    "%s with one vertex moved 0.1 mm along x or y differs, whichever it is",
    (name) => {
      const vertices = readDxf(written.get(name)!.text);
      const count = vertices.ok ? vertices.paths.reduce((sum, path) => sum + path.vertices.length, 0) : 0;
      expect(count).toBeGreaterThan(20);
      for (let n = 0; n < count; n++) {
        for (const code of [10, 20]) {
          const moved = readBack(name, (text) => withGroup(text, code, n, (x) => String(Number(x) + 0.1)));
          expect(moved.touched).toBe(true);
          expect(moved.status, `vertex ${n}`).toBe("differs");
        }
      }
    },
  );

  it.each([
    ["one hole gone", (text: string) => withoutEntity(text, "BORE-7_00"), /paths, not/],
    [
      "one arc turned",
      (text: string) => withGroup(text, 42, firstBulge(text), (b) => String(-Number(b))),
      /arcs|area/,
    ],
    [
      "one arc made straight",
      (text: string) => withGroup(text, 42, firstBulge(text), () => "0"),
      /arcs|length/,
    ],
    ["an outline opened", (text: string) => withGroup(text, 70, firstClosed(text), () => "0"), /closed|area/],
    [
      "a path on another layer",
      (text: string) => text.replaceAll("BORE-7_00", "BORE-7_50"),
      /BORE-7_50: 1 paths, not 0/,
    ],
    ["another unit", (text: string) => text.replace("$INSUNITS\n70\n4", "$INSUNITS\n70\n1"), /unit/],
    ["a note gone", (text: string) => text.replace("0\nTEXT\n", "0\nPOINT\n"), /strange|notes/],
    ["the outline mirrored", (text: string) => mirroredOutline(text), /vertex/],
    ["the plane turned over", (text: string) => inEntity(text, "210\n0\n220\n0\n230\n-1\n"), /strange/],
    ["a height", (text: string) => inEntity(text, "38\n5\n"), /strange/],
    ["a colour of its own", (text: string) => inEntity(text, "62\n1\n"), /strange/],
    ["a note on a layer that is cut", (text: string) => noteOn(text, "OUTER-EDGE"), /note/],
    ["the other hand in its title", (text: string) => text.replace("RIGHT HAND", "LEFT HAND"), /note/],
    ["other extents", (text: string) => text.replace(/(\$EXTMAX\n10\n)[-\d.]+/, "$1999"), /extents/],
    ["inches", (text: string) => text.replace("$MEASUREMENT\n70\n1", "$MEASUREMENT\n70\n0"), /measuring/],
    ["half of the file", (text: string) => text.slice(0, text.length / 2), /./],
    ["nothing", () => "", /./],
  ])("with %s differs", (_, change, why) => {
    const result = readBack("bridge", change);
    expect(result.touched).toBe(true);
    expect(result.status).toBe("differs");
    expect(result.differences.join("; ")).toMatch(why);
  });
});

/** The first outline's vertices with their x turned round, as for the other hand, in the order that keeps its winding. */
function mirroredOutline(text: string): string {
  const at = text.indexOf("8\nOUTER-EDGE\n", text.indexOf("ENTITIES"));
  const start = text.indexOf("\n10\n", at) + 1;
  const end = nextEntity(text, at);
  const vertices = [...text.slice(start, end).matchAll(/10\n(\S+)\n20\n(\S+)\n42\n(\S+)\n/g)].map(
    ([, x, y, b]) => ({ x, y, b }),
  );
  const turned = vertices.map((_, i) => {
    const { x, y } = vertices[(vertices.length - i) % vertices.length]!;
    const { b } = vertices[(2 * vertices.length - i - 1) % vertices.length]!;
    return `10\n${-Number(x)}\n20\n${y}\n42\n${b}\n`;
  });
  return text.slice(0, start) + turned.join("") + text.slice(end);
}

/** A file's text with groups put in before the first outline's vertices. */
function inEntity(text: string, groups: string): string {
  const at = text.indexOf("8\nOUTER-EDGE\n", text.indexOf("ENTITIES"));
  const start = text.indexOf("\n10\n", at) + 1;
  return text.slice(0, start) + groups + text.slice(start);
}

function noteOn(text: string, layer: string): string {
  const at = text.indexOf("0\nTEXT\n");
  return text.slice(0, at) + text.slice(at).replace("8\nNOTE\n", `8\n${layer}\n`);
}

function groups(text: string, code: number): string[] {
  const lines = text.slice(text.indexOf("ENTITIES\n") + 9).split("\n");
  return lines.flatMap((line, i) => (i % 2 === 0 && Number(line) === code ? [lines[i + 1]!] : []));
}

function firstBulge(text: string): number {
  return groups(text, 42).findIndex((bulge) => Number(bulge) !== 0);
}

function firstClosed(text: string): number {
  return groups(text, 70).indexOf("1");
}

describe("the writer", () => {
  const line = (points: [number, number, number][], layer = "OUTER-EDGE", closed = true) => ({
    shapes: [{ layer, path: { closed, points: points.map(([x, y, bulge]) => ({ x, y, bulge })) } }],
    notes: [],
  });
  const square: [number, number, number][] = [
    [0, 0, 0],
    [10, 0, 0],
    [10, 10, 0],
    [0, 10, 0],
  ];

  it("gives the same bytes whatever was written before", () => {
    const [first, ...others] = drawn;
    const before = dxfText(first!.flat);
    for (const { flat } of others) dxfText(flat);
    expect(dxfText(first!.flat)).toBe(before);
  });

  it("refuses what must never reach a machine", () => {
    expect(() => dxfText(line(square, "OUTER-EDGE", false))).toThrow(/open path/);
    expect(() => dxfText(line(square, "BORE-8_00", false))).toThrow(/open path/);
    expect(() => dxfText(line([[0, 0, 0]]))).toThrow(/without length/);
    expect(() =>
      dxfText(
        line([
          [1, 1, 1],
          [1, 1, 1],
        ]),
      ),
    ).toThrow(/without length/);
    for (const layer of ["BORE-0_00", "BORE--7_00", "RECESS-NaN", "outer edge"]) {
      expect(() => dxfText(line(square, layer))).toThrow(/layer named/);
    }
    expect(() => dxfText(line([[0, Number.NaN, 0], ...square]))).toThrow(/not finite/);
    expect(() => dxfText(line([[0, 0, Number.POSITIVE_INFINITY], ...square]))).toThrow(/not finite/);
    expect(() => dxfText({ shapes: [], notes: [] })).toThrow(/without lines/);
    const note = { text: "12°", x: 0, y: 0, height: 3, turn: 0, align: "left" } as const;
    expect(() => dxfText({ ...line(square), notes: [note] })).toThrow(/plain ASCII/);
    expect(() => dxfText({ ...line(square), notes: [{ ...note, text: "A\nB" }] })).toThrow(/plain ASCII/);
  });

  it("writes no number in a form that old readers trip over", () => {
    const text = dxfText(line([[1e-9, -1e-12, 1e-8], ...square.slice(1)]));
    expect(text).not.toMatch(/\de-\d|NaN|Infinity|-0\n/);
  });
});
