import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { titled } from "../../src/drawing/flat/titled.ts";
import { expectedOf } from "../../src/files/dxf/expected.ts";
import { readBackDxf } from "../../src/files/dxf/read-back.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import { dxfR12Text } from "../../src/files/dxf/write-r12.ts";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { packOf } from "../../src/pack/pack.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { frettedSpec, orderText, resolved, sampleText, specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

const work = mkdtempSync(join(tmpdir(), "r12-"));
afterAll(() => rmSync(work, { recursive: true, force: true }));

const store = memoryStore();
const title = {
  ...{
    order: "SY-0417",
    part: "nut",
    fingerprint: "0123456789ab",
    hand: "right" as const,
    seenFrom: "front",
  },
  overruled: ["wall.nut: brass"],
};
const specs = [
  specOf("sedge", 5),
  frettedSpec(7),
  specOf("mallow", 5, "", { hand: "left" }),
  specOf("bulrush", 4),
];
const flats = specs.flatMap((spec) => {
  const model = modelOf(spec, store);
  return flatsOf(spec).map((file) => ({
    name: `${spec.design}-${file.name}`,
    flat: titled(file.of(model, store).value, title),
  }));
});

describeWith(ezdxf, "DXF R12, opened by ezdxf and shapely", () => {
  it("holds what the later DXF does: the same paths, areas, arcs as bulges and texts, in AC1009", () => {
    const pairs = flats.map(({ name, flat }) => {
      const [later, old] = [join(work, `${name}.dxf`), join(work, `${name}-r12.dxf`)];
      writeFileSync(later, dxfText(flat));
      writeFileSync(old, dxfR12Text(flat));
      return `${later}=${old}`;
    });
    const read = python(join(import.meta.dirname, "read_r12.py"), ...pairs) as {
      readonly [key: string]: unknown;
      readonly paths: number;
      readonly bulged: number;
      readonly worst: number;
    }[];
    expect(read.length).toBeGreaterThan(120);
    for (const [i, row] of read.entries()) {
      expect({ pair: pairs[i], ...row }).toMatchObject({
        version: "AC1009",
        errors: [],
        kinds: ["POLYLINE", "TEXT"],
        texts: true,
        colours: [256],
      });
      expect(row.worst).toBeLessThan(1e-5);
      expect(row.paths).toBe(flats[i]!.flat.shapes.length);
    }
    expect(read.reduce((sum, { bulged }) => sum + bulged, 0)).toBeGreaterThan(300);
  });

  it("is read back like the later one, and what is changed in it is found", () => {
    for (const { flat } of flats)
      expect(readBackDxf(dxfR12Text(flat), expectedOf(flat), "r12")).toMatchObject({ status: "same" });
    const { flat } = flats.find(({ name }) => name === "sedge-bridge")!;
    const text = dxfR12Text(flat);
    const plant = (from: RegExp, to: string) => {
      const changed = text.replace(from, to);
      expect(changed).not.toBe(text);
      return readBackDxf(changed, expectedOf(flat), "r12").differences.join("; ");
    };
    expect(plant(/(VERTEX\n(?:.+\n){8})42\n(\d)/, "$142\n-$2")).toMatch(/arcs|bulge|length/);
    expect(plant(/\n30\n0\n70\n1\n/, "\n30\n0\n70\n0\n")).toMatch(/closed|area/);
    expect(plant(/VERTEX\n8\nOUTER-EDGE\n10\n[-\d.]+/, "VERTEX\n8\nOUTER-EDGE\n10\n0.5")).toMatch(/vertex/);
    expect(plant(/AC1009/, "AC1015")).toMatch(/version|strange/);
    expect(plant(/\n1\nE5/, "\n1\nE4")).toMatch(/note/);
    expect(readBackDxf(dxfText(flat), expectedOf(flat), "r12").differences.join()).toMatch(/version/);
    expect(readBackDxf(text, expectedOf(flat)).differences.join()).toMatch(/version/);
    expect(() => dxfR12Text({ ...flat, notes: [{ ...flat.notes[0]!, text: "12\u00b0" }] })).toThrow(
      "plain ASCII",
    );
  });

  it("comes into a pack where a machine of the shop reads nothing newer", async () => {
    const shop = sampleText("shops", "samphire.yaml").replace(
      "kind: laser, bed",
      "kind: laser, dxf: r12, bed",
    );
    const spec = resolved(orderText("sedge", 5), {}, { shops: { samphire: shop } });
    if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
    const { files } = await packOf(spec.value, { store, solids: solidsHere(kernelOnce()), only: ["nut"] });
    const file = files.find(({ path }) => path === "outlines/nut-r12.dxf")!;
    mkdirSync(dirname(join(work, file.path)), { recursive: true });
    expect(file).toMatchObject({
      readBack: { status: "same" },
      fingerprint: files.find(({ path }) => path === "outlines/nut.dxf")!.fingerprint,
    });
    expect(String(file.content)).toContain("AC1009");
  });
});
