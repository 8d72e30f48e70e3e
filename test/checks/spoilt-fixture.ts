import { findings } from "../../src/checks/checks.ts";
import { guidedChecks } from "../../src/checks/guided/guided-checks.ts";
import type { Path } from "../../src/geometry/path.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import type { Fixture } from "../../src/workshop/guided/fixture.ts";
import { reachedStretches } from "../../src/workshop/guided/reached-stretches.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { virtualCut } from "../../src/workshop/virtual-cut/virtual-cut.ts";

const store = memoryStore();

/** A fixture of a spec by its file. */
export function fixtureIn(spec: Spec, file: string): Fixture {
  const found = modelOf(spec, store)
    .fixtures()
    .find((one) => one.file === file);
  if (found === undefined) throw new Error(`no ${file}`);
  return found;
}

/** The model of a spec in which one fixture is spoilt. */
export function spoilt(spec: Spec, file: string, change: (fixture: Fixture) => Partial<Fixture>): Model {
  const model = modelOf(spec, store);
  const fixtures = model.fixtures().map((fixture) => {
    if (fixture.file !== file) return fixture;
    const plain = Object.fromEntries(Object.keys(fixture).map((key) => [key, fixture[key as keyof Fixture]]));
    return { ...(plain as Fixture), ...change(fixture) };
  });
  return { ...model, fixtures: () => fixtures };
}

/** What one check says of a fixture. */
export function told(model: Model, name: string, file: string) {
  const found = findings(model, guidedChecks).find(({ id }) => id === `${name}.${file}`);
  if (found === undefined) throw new Error(`no check ${name}.${file}`);
  return found;
}

/** The edge of a fixture that has one. */
export function edgeIn({ file, edge }: Fixture) {
  if (edge?.kind !== "ok") throw new Error(`${file}: ${edge?.kind}`);
  return edge;
}

/** The virtual cut of a fixture in which something is other than it was; a template cut along another edge is another template. */
export function cutAgain(
  fixture: Fixture,
  change: { readonly edge?: Path; readonly guide?: number; readonly kept?: Fixture["kept"] },
) {
  const { edge, template, places } = edgeIn(fixture);
  const { cutter, guide } = fixture.setUp!;
  const kept = change.kept ?? fixture.kept;
  return virtualCut.work({
    ...{ edge: change.edge ?? edge, template: change.edge ?? template, cutter: cutter.diameter },
    ...{ guide: change.guide ?? guide.diameter, joined: fixture.joined },
    cut: reachedStretches(fixture.run.path, places),
    kept: kept.map(({ id, path, margin }) => ({ id, path, margin })),
  });
}

/** A path moved, mm. */
export function movedBy(path: Path, x: number, y: number): Path {
  return { ...path, points: path.points.map((point) => ({ ...point, x: point.x + x, y: point.y + y })) };
}
