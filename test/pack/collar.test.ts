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
  const neck = await changed(["collar-60", "collar-62"]);
  expect(neck).toEqual([
    "bench/set-up-neck-shaper-back-2.svg",
  ]);
  const unused = await changed(["collar-80", "collar-82"]);
  expect(unused).toEqual([]);
}, 120_000);
