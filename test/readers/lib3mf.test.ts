import load, { type Lib3mf } from "@3mfconsortium/lib3mf";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { threemfWrite } from "../../src/files/threemf-write.ts";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import { parts } from "../geometry/solid/parts.ts";
import { known } from "../geometry/solid/recipes.ts";

let kernel: Kernel;
let reader: Lib3mf;
beforeAll(async () => {
  kernel = await loadKernel();
  reader = await load();
});

/** What lib3mf in strict mode makes of a file: its warnings, and for each mesh its counts and whether it is a closed manifold. */
function read(bytes: Uint8Array) {
  const made: { delete: () => void }[] = [];
  const keep = <T extends { delete: () => void }>(thing: T): T => {
    made.push(thing);
    return thing;
  };
  try {
    reader.FS.writeFile("/part.3mf", bytes);
    const model = keep(keep(new reader.CWrapper()).CreateModel());
    const strict = keep(model.QueryReader("3mf"));
    strict.SetStrictModeActive(true);
    strict.ReadFromFile("/part.3mf");
    const objects = keep(model.GetMeshObjects());
    const found = [];
    while (objects.MoveNext()) {
      const object = keep(objects.GetCurrentMeshObject());
      found.push({
        name: object.GetName(),
        valid: object.IsValid(),
        manifold: object.IsManifoldAndOriented(),
        vertices: object.GetVertexCount(),
        triangles: object.GetTriangleCount(),
      });
    }
    return { warnings: strict.GetWarningCount(), found };
  } finally {
    for (const thing of made.reverse()) thing.delete();
  }
}

function written(solid: (typeof parts)[number]["solid"], name: string) {
  const made = mesh(kernel, solid);
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  const file = threemfWrite([{ name, mesh: made.mesh }]);
  if (file.kind !== "ok") throw new Error(file.problem);
  return { made: made.mesh, bytes: file.bytes };
}

describe("lib3mf in strict mode takes as a closed manifold", () => {
  test.each([...known, ...parts])("$name", ({ name, solid }) => {
    const { made, bytes } = written(solid, name);
    const { warnings, found } = read(bytes);
    expect(warnings).toBe(0);
    expect(found).toEqual([
      {
        name,
        valid: true,
        manifold: true,
        vertices: made.positions.length / 3,
        triangles: made.triangles.length / 3,
      },
    ]);
  });
});

test("lib3mf finds a flipped facet, and refuses a corner that leads nowhere", () => {
  const { bytes } = written(known[0]!.solid, "box");
  const files = unzipSync(bytes);
  const model = strFromU8(files["3D/3dmodel.model"]!);
  const spoilt = (text: string) => zipSync({ ...files, "3D/3dmodel.model": strToU8(text) });
  const flipped = spoilt(model.replace(/v1="(\d+)" v2="(\d+)"/, 'v1="$2" v2="$1"'));
  expect(read(flipped).found).toMatchObject([{ manifold: false }]);
  expect(() => read(spoilt(model.replace(/v3="\d+"/, 'v3="99"')))).toThrow();
});
