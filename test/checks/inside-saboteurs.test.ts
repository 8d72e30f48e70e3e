import { describe, expect, it } from "vitest";
import { findings } from "../../src/checks/checks.ts";
import { insideChecks } from "../../src/checks/inside/inside-checks.ts";
import { mirrored } from "../../src/geometry/mirror.ts";
import type { Path } from "../../src/geometry/path.ts";
import { reversedPath } from "../../src/geometry/reversed-path.ts";
import { memoryStore } from "../../src/step/store.ts";
import { reachedStretches } from "../../src/workshop/guided/reached-stretches.ts";
import { guidedOpening } from "../../src/workshop/inside/guided-opening.ts";
import type { Inside, Opening } from "../../src/workshop/inside/inside.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { virtualCut } from "../../src/workshop/virtual-cut/virtual-cut.ts";
import { specOf } from "../samples.ts";

const store = memoryStore();
const five = specOf("sedge", 5);
const file = "neck-back-inside";
const found = (model: Model, name: string) =>
  findings(model, insideChecks).find(({ id }) => id === `${name}.${file}`)!;

/** What is worked out lazily, as plain data. */
const plain = <T extends object>(one: T): T =>
  Object.fromEntries(Object.keys(one).map((key) => [key, one[key as keyof T]])) as T;

/** The model of a spec in which one template is spoilt. */
function spoilt(change: (inside: Inside) => Partial<Inside>): Model {
  const model = modelOf(five, store);
  const insides = model.insides().map((inside) => {
    if (inside.file !== file) return inside;
    return { ...plain(inside), ...change(inside) };
  });
  return { ...model, insides: () => insides };
}

/** The same with one opening spoilt: the ledge of the battery's cover. */
const spoiltOpening = (change: (opening: Opening, inside: Inside) => Partial<Opening>) =>
  spoilt((inside) => ({
    openings: inside.openings.map((opening) =>
      opening.id === "battery-ledge" ? { ...plain(opening), ...change(opening, inside) } : opening,
    ),
  }));

const okOf = ({ edge, id }: Opening) => {
  if (edge?.kind !== "ok") throw new Error(id);
  return edge;
};
/** The virtual cut of an opening in which something is other than it was. */
const cutAgain = (
  opening: Opening,
  { setUp, kept }: Inside,
  change: { edge?: Path; guide?: number; kept?: Inside["kept"] },
) => {
  const { edge: own, run, places } = okOf(opening);
  const edge = change.edge ?? own;
  return virtualCut.work({
    ...{ edge, template: edge, guide: change.guide ?? setUp!.guide.diameter, cutter: setUp!.cutter.diameter },
    ...{ cut: reachedStretches(run.path, places), joined: [] },
    kept: (change.kept ?? kept).map(({ id, path, margin }) => ({ id, path, margin })),
  });
};
const moved = (path: Path, x: number, y: number): Path => ({
  ...path,
  points: path.points.map((point) => ({ ...point, x: point.x + x, y: point.y + y })),
});

describe("saboteurs of inside templates, each found", () => {
  it.each<[string, string, () => Model]>([
    [
      "an offset of the wrong sign",
      "virtual-cut",
      () =>
        spoiltOpening((opening, inside) => {
          const { cutter, guide } = inside.setUp!;
          const swapped = { cutter: guide.diameter, guide: cutter.diameter, first: null };
          const wrong = guidedOpening.work({ recess: opening.recess, ...swapped });
          if (wrong.kind !== "ok") throw new Error(wrong.kind);
          return { cut: cutAgain(opening, inside, { edge: wrong.edge }) };
        }),
    ],
    [
      "a guide 0.2 larger than written",
      "virtual-cut",
      () => spoiltOpening((opening, inside) => ({ cut: cutAgain(opening, inside, { guide: 10.2 }) })),
    ],
    [
      "a template moved by 0.02",
      "virtual-cut",
      () =>
        spoiltOpening((opening, inside) => ({
          cut: cutAgain(opening, inside, { edge: moved(okOf(opening).edge, 0, 0.02) }),
        })),
    ],
    [
      "a climb arrow",
      "feed.climb",
      () =>
        spoiltOpening(({ feed }) => ({
          feed: {
            ...feed!,
            tool: feed!.tool.map((arrow, i) =>
              i > 0 ? arrow : { ...arrow, way: { x: 0 - arrow.way.x, y: 0 - arrow.way.y } },
            ),
          },
        })),
    ],
    ["no arrow at all", "feed.climb", () => spoiltOpening(({ feed }) => ({ feed: { ...feed!, tool: [] } }))],
    [
      "a clamp, diagonally off the opening, moved 12 mm toward it",
      "clamp.swept",
      () =>
        spoiltOpening((opening, inside) => {
          const kept = inside.kept.map((one) =>
            one.id === "arm of clamp 1" ? { ...one, path: moved(one.path, 12, 0) } : one,
          );
          return { cut: cutAgain(opening, inside, { kept }) };
        }),
    ],
    [
      "a pin under the router's base",
      "metal",
      () =>
        spoiltOpening((opening, inside) => {
          const kept = inside.kept.map((one) =>
            one.id === "index pin 6" ? { ...one, path: moved(one.path, 60, 0) } : one,
          );
          return { cut: cutAgain(opening, inside, { kept }) };
        }),
    ],
    [
      "a plunge against the edge",
      "run-in.missing",
      () =>
        spoiltOpening((opening) => {
          const edge = okOf(opening);
          const { at } = edge.plunge;
          return { edge: { ...edge, plunge: { ...edge.plunge, at: { x: at.x + 27, y: at.y } } } };
        }),
    ],
    [
      "a plunge outside the opening",
      "run-in.missing",
      () =>
        spoiltOpening((opening) => {
          const edge = okOf(opening);
          return { edge: { ...edge, plunge: { ...edge.plunge, at: { x: 0, y: 60 } } } };
        }),
    ],
    [
      "a clamp that presses beside its plate",
      "hold.none",
      () =>
        spoilt(({ layout }) => {
          const [first, ...others] = layout!.clamps;
          const pad = { x: first!.pad.x - 60, y: first!.pad.y };
          return { layout: { ...layout!, clamps: [{ ...first!, pad }, ...others] } };
        }),
    ],
    [
      "a clamp that stands in the work",
      "hold.none",
      () =>
        spoilt(({ layout }) => {
          const [first, ...others] = layout!.clamps;
          const base = moved(first!.base, 150, 0 - first!.pad.y);
          return { layout: { ...layout!, clamps: [{ ...first!, base }, ...others] } };
        }),
    ],
    [
      "an opening without an edge",
      "edge.none",
      () => spoiltOpening(({ edge }) => ({ edge: { kind: "no-edge", run: edge!.run } })),
    ],
    [
      "an edge that is left open",
      "edge.none",
      () =>
        spoiltOpening((opening) => {
          const edge = okOf(opening);
          return { edge: { ...edge, edge: { ...edge.edge, closed: false } } };
        }),
    ],
    ["a pass left out", "removal", () => spoiltOpening(({ passes }) => ({ passes: passes.slice(1) }))],
    [
      "passes that end too high",
      "removal",
      () => spoiltOpening(({ passes }) => ({ passes: passes.slice(0, -1) })),
    ],
    [
      "two ledges on one plate",
      "web",
      () => spoilt(({ plates }) => ({ plates: plates!.map((one) => (one === 1 ? 0 : one)) })),
    ],
    [
      "a rim that runs too fast",
      "rim-speed",
      () =>
        spoilt(({ setUp }) => ({
          setUp: { ...setUp!, speed: { ...setUp!.speed, rpm: 230_000 } },
        })),
    ],
    [
      "handholds within 152 of the cutter",
      "hand.near",
      () =>
        spoilt((inside) => {
          const kept = inside.kept.map((one) => ({ ...one, what: "handhold" as const }));
          const setUp = { ...inside.setUp!, machine: { ...inside.setUp!.machine, moves: "work" as const } };
          return { kept, setUp };
        }),
    ],
    [
      "a template thinner than its bush stands out",
      "guide.bearing",
      () => spoilt(({ sheet }) => ({ sheet: sheet?.kind === "ok" ? { ...sheet, thickness: 6 } : sheet })),
    ],
  ])("find %s: %s", (_, name, made) => {
    const before = found(modelOf(five, store), name);
    expect(before.status).toBe("pass");
    const said = found(made(), name);
    expect(said.status, said.why).toBe("refuse");
    expect(said.why.length).toBeGreaterThan(10);
  });

  it("find nothing in an opening that is tried once more as it is, and a wing's template that isn't mirrored for its back", () => {
    const as = spoiltOpening((opening, inside) => ({ cut: cutAgain(opening, inside, {}) }));
    for (const name of ["virtual-cut", "clamp.swept", "metal"]) expect(found(as, name).status).toBe("pass");
    const wing = modelOf(five, store)
      .insides()
      .find((one) => one.file === "wing-bass-back-inside")!;
    const jack = wing.openings.find(({ id }) => id === "jack-ledge")!;
    const turned = reversedPath(mirrored(okOf(jack).edge, "y"));
    const cut = cutAgain(jack, wing, { edge: turned });
    expect(cut.kind === "ok" && cut.deviation).toBeGreaterThan(1);
  });
});
