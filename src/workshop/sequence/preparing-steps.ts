import type { Model } from "../model.ts";
import type { Filed, WorkStep } from "./work-step.ts";

const own = { part: "fixtures", datum: "none", square: "nothing needs to be", setUp: null } as const;

/** What is made before any wood is cut: templates and fixtures, printed jigs; each only where there is one. */
export function preparingSteps({ spec }: Model, filed: readonly Filed[]): WorkStep[] {
  const has = (folder: string) => filed.filter((file) => file.folder === folder).map(({ name }) => name);
  const [fixtures, jigs] = [has("fixtures"), has("printed")];
  return [
    ...(fixtures.length === 0
      ? []
      : [
          {
            ...{ ...own, id: "fixtures.cut", at: "laser or CNC" as const, thickness: null, files: fixtures },
            what: "Cut templates and fixtures, ease no guided edge, bore, scribe their labels; measure cutters and guides again",
            measure: "the 100 mm bar of each; d on a test strip",
            needs: [{ from: "stock", what: "sheets for templates" }],
          },
        ]),
    ...(jigs.length === 0
      ? []
      : [
          {
            ...{ ...own, id: "jigs.print", at: "printer" as const, thickness: null, files: jigs },
            what: `Print gauges, guides and cauls on ${printerOf(spec.shop.machines)}; join those in pieces; none guides a cutter`,
            ...{ measure: "one known length of each", needs: [{ from: "stock", what: "filament" }] },
          },
        ]),
  ];
}

function printerOf(machines: readonly { readonly id: string; readonly kind: string }[]): string {
  return machines.find(({ kind }) => kind === "printer")?.id ?? "a printer";
}
