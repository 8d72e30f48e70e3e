import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { packOf } from "../../src/pack/pack.ts";
import type { Solids } from "../../src/pack/solids/solid-tasks.ts";
import { type SolidsAside, solidsAside } from "../../src/pack/solids/solids-aside.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { memoryStore } from "../../src/step/store.ts";
import { specOf, top } from "../samples.ts";

const worker = pathToFileURL(join(top, "dist", "solid-worker.js"));
const kernel = kernelOnce();
const plate = (height: number) =>
  ({
    kind: "extrude",
    outlines: [{ outer: { closed: true, points: [corner(0, 0), corner(20, 0), corner(0, 10)] }, holes: [] }],
    height,
  }) as const;

function corner(x: number, y: number) {
  return { x, y, bulge: 0 };
}

describe("solids worked out in a thread of their own", () => {
  let aside: SolidsAside;
  beforeAll(() => {
    aside = solidsAside(worker);
  });
  afterAll(() => aside.end());

  it("come out as in this thread, to the byte", async () => {
    const only = ["nut", "bridge"];
    const [here, there] = await Promise.all(
      [solidsHere(kernel), aside.solids].map((solids) =>
        packOf(specOf("sedge", 4), { store: memoryStore(), solids, only }),
      ),
    );
    expect(here!.files.filter(({ path }) => path.endsWith(".stl")).length).toBeGreaterThanOrEqual(2);
    expect(there!.files).toEqual(here!.files);
  });

  it("reject a recipe that has no mesh with its reason, and go on with the next", async () => {
    await expect(aside.solids("mesh", { name: "plate", key: "flat", solid: plate(0) })).rejects.toThrow(
      /plate can't be made a mesh: no-height/,
    );
    const mesh = await aside.solids("mesh", { name: "plate", key: "thick", solid: plate(3) });
    expect(mesh.triangles.length).toBe(3 * 8);
  });

  it("reject a file of what was never meshed", async () => {
    const file = { name: "ghost", folder: "outlines", part: "nut", what: "nothing", key: "unknown" } as const;
    await expect(aside.solids("files", { file, solid: null })).rejects.toThrow(/ghost was never meshed/);
  });

  it("reject all that is waited for when the thread ends", async () => {
    const brief = solidsAside(worker);
    const waiting = brief.solids("mesh", { name: "plate", key: "thick", solid: plate(3) });
    const told = expect(waiting).rejects.toThrow(/ended before its work was done/);
    await brief.end();
    await told;
  });
});

describe("a pack whose solids refuse once they are measured", () => {
  it("is drawn again without what is held back", async () => {
    const own = solidsHere(kernel);
    const overlapping: Solids = async (kind, asks) => {
      const gives = await own(kind, asks);
      if (kind !== "measure") return gives;
      const fits = gives as Awaited<ReturnType<typeof own<"measure">>>;
      // Every gap gone and a cubic centimetre in both: planted.
      return fits.map((one) => ({ ...one, interference: 1000 })) as unknown as typeof gives;
    };
    const spec = specOf("sedge", 4);
    const store = memoryStore();
    const [good, bad] = [
      await packOf(spec, { store, solids: own }),
      await packOf(spec, { store, solids: overlapping }),
    ];
    const paths = ({ files }: typeof good) => files.map(({ path }) => path);
    expect(paths(good)).toContain("outlines/assembly.stl");
    const refused = bad.report.checks.filter(
      ({ id, status }) => id === "assembly.overlap" && status === "refuse",
    );
    expect(refused).toHaveLength(1);
    expect(bad.held.map(({ check }) => check)).toContain("assembly.overlap");
    const heldBack = new Set(bad.held.map(({ file }) => file));
    expect(heldBack.size).toBeGreaterThan(0);
    for (const path of paths(bad)) {
      const name = /^(?:outlines|fixtures|printed)\/(.+)\.(?:dxf|stl|3mf)$/.exec(path)?.[1];
      if (name !== undefined) expect(heldBack.has(name), path).toBe(false);
    }
  });
});
