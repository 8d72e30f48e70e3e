import { allFixtures, type FixtureName } from "../order/fixture-names.ts";
import type { Spec } from "../order/spec.ts";
import type { Fixture } from "../workshop/guided/fixture.ts";
import { fixtureNamed } from "../workshop/guided/fixtures.ts";
import { sawWander } from "../workshop/guided/passes.ts";
import type { Model } from "../workshop/model.ts";
import { type Dimension, length } from "./dimension.ts";

/** How far a virtual cut's deviation may move before a comparison counts it, mm: half of what refuses it. */
const cutTolerance = 0.005;

/** What is worked out of the fixtures; nothing where a build has none. */
export function fixtureDimensions(spec: Spec): Dimension[] {
  return allFixtures.filter(({ applies }) => applies(spec)).flatMap(ofFixture);
}

function ofFixture({ file, part }: FixtureName): Dimension[] {
  const of = (model: Model) => fixtureNamed(model.fixtures(), file);
  const named = (id: string, label: string, worked: (fixture: Fixture) => number) =>
    length(part, id, `${label} (fixture ${file})`, (model) => worked(of(model)));
  return [
    named(
      `fixture.${file}.offset`,
      "Guided edge out from the finished one, 0 without a set-up",
      ({ setUp }) => setUp?.offset ?? 0,
    ),
    {
      ...named(
        `virtual-cut.${file}`,
        "Greatest deviation of the virtual cut from the finished edge, all that the saw leaves where nothing is cut",
        ({ cut, allowance }) => (cut?.kind === "ok" ? cut.deviation : allowance + sawWander),
      ),
      tolerance: cutTolerance,
    },
  ];
}
