import { allFixtures } from "../../order/fixture-names.ts";
import { routerCautions } from "../../workshop/cautions/router.ts";
import { shaperCautions } from "../../workshop/cautions/shaper.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import { fixtureNamed } from "../../workshop/guided/fixtures.ts";
import type { GuidedMachine } from "../../workshop/guided/set-up.ts";
import { type FixtureFlatInput, fixtureFlat } from "./fixture.ts";
import type { FlatFile } from "./flat-file.ts";

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
  const { machine, cutter, guide, first, offset, passes, speed } = setUp;
  return {
    ...{ outline, missing: null },
    made: {
      ...{ template: edge.template, edge: edge.edge, holding: holding!, arrows: feed!.tool, way: feed!.way },
      notes: {
        ...{ part, up, offset, passes, thickness, grain: grain!, places: edge.places, sheet: sheet! },
        machine: { id: machine.id, rotation: machine.rotation, moves: machine.moves },
        cutter: { id: cutter.id, diameter: cutter.diameter, measured: cutter.measured },
        guide: { id: guide.id, kind: guide.kind, diameter: guide.diameter, measured: guide.measured },
        first: first && { id: first.id, diameter: first.diameter, measured: first.measured },
        ...{ speed: { rpm: speed.rpm, rim: speed.rim }, cautions: cautionsOf(fixture, machine) },
        ...(said.length === 0 ? {} : { said: said.map(lettered) }),
      },
    },
  };
}

function cautionsOf({ template }: Fixture, machine: GuidedMachine) {
  return machine.kind === "shaper" ? shaperCautions(template) : routerCautions(machine.moves);
}

function lettered(text: string): string {
  return text.toUpperCase().replace(/[^ -~]/g, " ");
}
