import type { Path } from "../../geometry/path.ts";
import { windingsOf } from "../../geometry/winding-at.ts";
import { type FixtureRule, untried } from "./fixture-check.ts";

/** What stands fixed on a fixture. */
const fixed: readonly string[] = ["clamp", "stop", "pin", "screw"];

/**
 * Whether anything fixed stands across the cutter from the work, so that work or an offcut is caught between the two. All that holds stands on the
 * template's own side of its guided edge. Found: how many things don't.
 */
export const trapped: FixtureRule = {
  name: "trapped",
  of: ({ edge, kept }) => {
    const usual = {
      ...({ stake: "injury", unit: "", limit: 0 } as const),
      source: "published shaper guidance; HSE WIS18",
    };
    if (edge?.kind !== "ok") return untried(usual, "edge.none");
    const onTemplate = windingsOf([edge.template]);
    const across = kept.filter(({ what, path }) => fixed.includes(what) && onTemplate(middleOf(path)) === 0);
    const names = across.map(({ id }) => id).join(", ");
    return {
      ...{ ...usual, status: across.length > 0 ? "refuse" : "pass", found: across.length },
      why:
        across.length > 0
          ? `${names} stands across the cutter from the work, which is caught between them: move it behind the guided edge`
          : "nothing fixed stands across the cutter from the work",
    };
  },
};

function middleOf({ points }: Path) {
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}
