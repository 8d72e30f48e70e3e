import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { type Difference, readBack } from "../../src/files/read-back.ts";
import { stlRead } from "../../src/files/stl-read.ts";
import { stlWrite } from "../../src/files/stl-write.ts";
import { threemfRead } from "../../src/files/threemf-read.ts";
import { threemfWrite } from "../../src/files/threemf-write.ts";
import { loadKernel } from "../../src/geometry/kernel.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import type { TriangleMesh } from "../../src/geometry/solid/triangle-mesh.ts";
import { parts } from "../geometry/solid/parts.ts";
import { known, moved, raised, rectangle } from "../geometry/solid/recipes.ts";

const meshes = new Map<string, TriangleMesh>();
beforeAll(async () => {
  const kernel = await loadKernel();
  for (const { name, solid } of [...known, ...parts]) {
    const made = mesh(kernel, solid);
    if (made.kind !== "ok") throw new Error(`${name}: ${JSON.stringify(made)}`);
    meshes.set(name, made.mesh);
  }
});

const names = [...known, ...parts].map(({ name }) => name);

function expected(of: TriangleMesh) {
  return { ...meshMeasures(of), triangles: of.triangles.length / 3 };
}

function stlDifferences(bytes: Uint8Array, of: TriangleMesh): readonly Difference[] {
  const read = stlRead(bytes);
  if (read.kind !== "ok") throw new Error(read.problem);
  return readBack(read.surface, expected(of));
}

function threemf(of: TriangleMesh, name = "piece"): Uint8Array {
  const written = threemfWrite([{ name, mesh: of }]);
  if (written.kind !== "ok") throw new Error(written.problem);
  return written.bytes;
}

function threemfDifferences(bytes: Uint8Array, of: TriangleMesh): readonly Difference[] {
  const read = threemfRead(bytes);
  if (read.kind !== "ok") throw new Error(read.problem);
  return readBack(read.pieces[0]!.surface, expected(of));
}

describe.each(names)("%s", (name) => {
  test("reads back from STL as the model has it, with true normals", () => {
    const bytes = stlWrite(meshes.get(name)!);
    expect(stlDifferences(bytes, meshes.get(name)!)).toEqual([]);
    expect(stlRead(bytes)).toMatchObject({ wrongNormals: 0 });
    expect(Buffer.compare(stlWrite(meshes.get(name)!), bytes)).toBe(0);
  });

  test("reads back from 3MF as the model has it", () => {
    const bytes = threemf(meshes.get(name)!);
    expect(threemfDifferences(bytes, meshes.get(name)!)).toEqual([]);
    expect(Buffer.compare(threemf(meshes.get(name)!), bytes)).toBe(0);
  });
});

describe("saboteurs in an STL are found", () => {
  const part = () => meshes.get("plate with forty holes")!;
  const spoilt = (spoil: (view: DataView, bytes: Uint8Array) => void) => {
    const bytes = stlWrite(part());
    spoil(new DataView(bytes.buffer), bytes);
    return bytes;
  };
  const kinds = (differences: readonly Difference[]) => new Set(differences.map((d) => d.what));

  test("a flipped facet", () => {
    const bytes = spoilt((_, all) => {
      const [first, second] = [all.slice(84 + 12, 84 + 24), all.slice(84 + 24, 84 + 36)];
      all.set(second, 84 + 12);
      all.set(first, 84 + 24);
    });
    expect(kinds(stlDifferences(bytes, part()))).toContain("open-edges");
    expect(stlRead(bytes)).toMatchObject({ wrongNormals: 1 });
  });

  test("a corner given twice", () => {
    const bytes = spoilt((_, all) => all.set(all.slice(84 + 12, 84 + 24), 84 + 24));
    expect(kinds(stlDifferences(bytes, part()))).toContain("open-edges");
  });

  test("a shell turned inside out", () => {
    const { positions, triangles } = part();
    const bytes = stlWrite({ positions, triangles: Uint32Array.from(triangles).reverse() });
    expect([...kinds(stlDifferences(bytes, part()))]).toEqual(["volume"]);
  });

  test("a corner moved by a hundredth", () => {
    const bytes = spoilt((view) => view.setFloat32(84 + 12, view.getFloat32(84 + 12, true) + 0.01, true));
    expect(kinds(stlDifferences(bytes, part()))).toContain("open-edges");
  });

  test("a part ten thousandths of its size too large", () => {
    const { positions, triangles } = part();
    const bytes = stlWrite({ positions: positions.map((v) => v * 1.001), triangles });
    expect([...kinds(stlDifferences(bytes, part()))].sort()).toEqual(["extents", "volume"]);
  });

  test("a facet too many, too few, and half a facet", () => {
    const bytes = stlWrite(part());
    expect(stlRead(bytes.slice(0, -1))).toEqual({ kind: "bad", problem: "length" });
    expect(stlRead(bytes.slice(0, 50))).toEqual({ kind: "bad", problem: "length" });
    const { positions, triangles } = part();
    const fewer = stlWrite({ positions, triangles: triangles.slice(3) });
    expect(kinds(stlDifferences(fewer, part()))).toContain("triangles");
  });

  test("a coordinate that is no number", () => {
    const bytes = spoilt((view) => view.setFloat32(84 + 20, Number.NaN, true));
    expect(stlRead(bytes)).toEqual({ kind: "bad", problem: "not-finite" });
  });
});

describe("saboteurs in a 3MF are found", () => {
  const part = () => meshes.get("box")!;
  const spoilt = (spoil: (model: string) => string) => {
    const files = unzipSync(threemf(part()));
    const model = strFromU8(files["3D/3dmodel.model"]!);
    const changed = spoil(model);
    expect(changed).not.toBe(model);
    return zipSync({ ...files, "3D/3dmodel.model": strToU8(changed) });
  };

  test("a flipped facet", () => {
    const bytes = spoilt((model) => model.replace(/v1="(\d+)" v2="(\d+)"/, 'v1="$2" v2="$1"'));
    expect(threemfDifferences(bytes, part()).map((d) => d.what)).toContain("open-edges");
  });

  test("a vertex given twice", () => {
    const bytes = spoilt((model) => {
      const first = /<vertex [^>]*>/.exec(model)![0];
      return model.replace("</vertices>", `${first}\n</vertices>`).replace('v1="0"', 'v1="8"');
    });
    expect(threemfDifferences(bytes, part()).map((d) => d.what)).toContain("open-edges");
  });

  test("a shell turned inside out", () => {
    const bytes = spoilt((model) => model.replace(/v1="(\d+)" v2="(\d+)"/g, 'v1="$2" v2="$1"'));
    expect(threemfDifferences(bytes, part()).map((d) => d.what)).toEqual(["volume"]);
  });

  test.each([
    ["another unit", (m: string) => m.replace("millimeter", "inch"), "unit"],
    ["a number that is none", (m: string) => m.replace(/x="[^"]*"/, 'x="wide"'), "not-finite"],
    ["a corner that leads nowhere", (m: string) => m.replace(/v3="\d+"/, 'v3="99"'), "index"],
    ["a piece not built", (m: string) => m.replace(/<item[^>]*>/, ""), "build"],
  ])("%s", (_, spoil, problem) => {
    expect(threemfRead(spoilt(spoil))).toEqual({ kind: "bad", problem });
  });

  test("no zip, no model", () => {
    expect(threemfRead(new Uint8Array(10))).toEqual({ kind: "bad", problem: "zip" });
    expect(threemfRead(zipSync({ a: strToU8("b") }))).toEqual({ kind: "bad", problem: "no-model" });
  });
});

test("blocks that touch along an edge alone: sound in a 3MF, told by the read-back of an STL", async () => {
  const block = raised(rectangle(9, 9), 9);
  const made = mesh(await loadKernel(), { kind: "union", solids: [block, moved(block, 9, 9, 0)] });
  if (made.kind !== "ok") throw new Error(made.kind);
  expect(threemfDifferences(threemf(made.mesh), made.mesh)).toEqual([]);
  expect(stlDifferences(stlWrite(made.mesh), made.mesh)).toEqual([
    { what: "crowded-edges", found: 1, wanted: 0 },
  ]);
});

test("names are kept as they are, and refused where they can't be written", () => {
  const of = meshes.get("box")!;
  const read = threemfRead(threemf(of, 'jig <12> & "15°"'));
  expect(read.kind === "ok" && read.pieces[0]!.name).toBe('jig <12> & "15°"');
  for (const name of ["", "a\nb", "\u0000", "\ud800"]) {
    expect(threemfWrite([{ name, mesh: of }])).toEqual({ kind: "invalid", problem: "name", piece: 0 });
  }
  expect(threemfWrite([])).toMatchObject({ problem: "nothing-given" });
  const none = { positions: new Float32Array(), triangles: new Uint32Array() };
  expect(
    threemfWrite([
      { name: "a", mesh: of },
      { name: "b", mesh: none },
    ]),
  ).toEqual({
    kind: "invalid",
    problem: "no-triangles",
    piece: 1,
  });
});

test("several pieces stay several", () => {
  const written = threemfWrite([...meshes].map(([name, of]) => ({ name, mesh: of })));
  if (written.kind !== "ok") throw new Error(written.problem);
  const read = threemfRead(written.bytes);
  if (read.kind !== "ok") throw new Error(read.problem);
  expect(read.pieces.map((piece) => piece.name)).toEqual([...meshes.keys()]);
});
