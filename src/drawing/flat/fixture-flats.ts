import { allFixtures } from "../../order/fixture-names.ts";
import { machineCautions } from "../../workshop/cautions/machine-cautions.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import { fixtureNamed } from "../../workshop/guided/fixtures.ts";
import { type FixtureFlatInput, fixtureFlat } from "./fixture.ts";
import type { FlatFile } from "./flat-file.ts";
import { lettered } from "./lettered.ts";
import { toolsTold } from "./tools-told.ts";

/** The fixtures that parts are cut against, each as it lies before whoever cuts. */
export const fixtureFlats: readonly FlatFile[] = allFixtures.map(({ file, part, what, applies }) => ({
  ...{ name: file, folder: "fixtures", part, seenFrom: "front", what },
  seenAsCut: (model) => fixtureNamed(model.fixtures(), file).up,
  applies,
  of: (model, store) => store.answer(fixtureFlat, drawnFrom(fixtureNamed(model.fixtures(), file))),
}));

function drawnFrom(fixture: Fixture): FixtureFlatInput {
  const { outline, chosen, setUp, edge, feed, grain, holding, sheet, part, thickness, up, said } = fixture;
  if (edge?.kind !== "ok" || setUp === null) {
    const missing = chosen.kind === "none" ? chosen.faults[0].why : `no guided edge: ${edge?.kind}`;
    return { outline, missing: lettered(missing), made: null };
  }
  const { machine, passes } = setUp;
  return {
    ...{ outline, missing: null },
    made: {
      ...{ template: edge.template, edge: edge.edge, holding: holding!, arrows: feed!.tool, way: feed!.way },
      notes: {
        ...{ part, up, passes, thickness, grain: grain!, places: edge.places, sheet: sheet! },
        ...toolsTold(setUp),
        cautions: machineCautions(machine, fixture.template),
        ...(said.length === 0 ? {} : { said: said.map(lettered) }),
      },
    },
  };
}
