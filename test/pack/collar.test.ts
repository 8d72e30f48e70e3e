import { createHash } from "node:crypto";
import { expect, it } from "vitest";
import type { Spec } from "../../src/order/spec.ts";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { packOf } from "../../src/pack/pack.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { memoryStore } from "../../src/step/store.ts";
import { specOf } from "../samples.ts";

const kernel = kernelOnce();
const store = memoryStore();
const solids = solidsHere(kernel);

/** Every file of a whole pack by its path: its fingerprint and its bytes' hash. */
async function printsOf(spec: Spec) {
  const { files, held } = await packOf(spec, { store, solids });
  expect(held).toEqual([]);
  return new Map(
    files.map(({ path, fingerprint, content }) => {
      const hash = createHash("sha256").update(content).digest("hex");
      return [path, { fingerprint, hash }] as const;
    }),
  );
}

/** The usual order in a shop in which some guides have been measured again, all worn alike so that a pair stays a pair. */
function worn(spec: Spec, ids: readonly string[], by: number): Spec {
  const guides = spec.shop.guides.map((one) =>
    ids.includes(one.id) ? { ...one, diameter: one.diameter - by } : one,
  );
  expect(guides.filter((one, i) => one !== spec.shop.guides[i])).toHaveLength(ids.length);
  return { ...spec, shop: { ...spec.shop, guides } };
}

/** What tells of the whole pack, and so of every number in it. */
const ofAll = /^(bench\/traveller.*|dimensions\.\w+|checks\.json|manifest\.json|index\.html)$/;

it("a collar, a bearing or a bush changes, of a whole pack, the files of the fixtures that use it and no other", async () => {
  const usual = specOf("sedge", 5);
  const before = await printsOf(usual);
  const changed = async (ids: readonly string[]) => {
    const after = await printsOf(worn(usual, ids, 0.2));
    expect([...after.keys()]).toEqual([...before.keys()]);
    const names = [...after.keys()].filter((path) => after.get(path)!.hash !== before.get(path)!.hash);
    const moved = [...after.keys()].filter(
      (path) => after.get(path)!.fingerprint !== before.get(path)!.fingerprint,
    );
    // Bytes move where the fingerprint does, and nowhere else.
    expect(moved.filter((path) => !ofAll.test(path)).sort()).toEqual(
      names.filter((path) => !ofAll.test(path)).sort(),
    );
    return names.filter((path) => !ofAll.test(path)).sort();
  };
  // Both of a fixture's set-ups have sheets of their own.
  const neck = ["back", "front"].flatMap((up) =>
    ["-2.svg", ".pdf", ".svg"].map((end) => `bench/set-up-neck-shaper-${up}${end}`),
  );
  expect(await changed(["collar-60", "collar-62"])).toEqual([
    ...neck,
    ...["fixtures/neck-shaper.dxf", "fixtures/neck-shaper.svg", "full-size/neck-shaper.pdf"],
  ]);
  expect(await changed(["collar-80", "collar-82"])).toEqual([]);
  const bearing = await changed(["bearing-19", "bearing-21"]);
  const files = ["fingerboard-router", "wing-bass-router", "wing-treble-router"];
  for (const file of files) expect(bearing).toContain(`fixtures/${file}.dxf`);
  expect(bearing.filter((path) => !files.some((file) => path.includes(file)))).toEqual([]);
  const bush = await changed(["bush-10"]);
  expect(bush).toContain("fixtures/neck-back-inside.dxf");
  expect(bush.filter((path) => !path.includes("-inside"))).toEqual([]);
  // What else moves is seen: with another allowance the saw lines are other ones too.
  const more = specOf("sedge", 5, "set:\n  saw.allowance: 1.8\n");
  const all = await printsOf(worn(more, ["collar-60", "collar-62"], 0.2));
  const moved = [...all.keys()].filter((path) => all.get(path)!.hash !== before.get(path)?.hash);
  expect(moved).toEqual(expect.arrayContaining(["fixtures/neck-shaper.dxf", "outlines/wing-bass-saw.dxf"]));
}, 120_000);
