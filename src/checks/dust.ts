import { dimensionOf, type Spec } from "../order/spec.ts";
import type { Model } from "../workshop/model.ts";
import { woodTaken } from "../workshop/stock/wood-taken.ts";
import type { Check } from "./check.ts";

const source = "NIOSH 1 mg/m3; UK 3 for hardwood, 5 for softwood; EU 2";

/** How to keep dust from lungs, as both checks say it. */
const keep = "extract at the machine, wear a mask that fits, and don't sweep it up dry";

/** The dust of every wood that is worked, by name. Found: how many woods; nobody has measured the air. */
export const dustOfWood: Check = {
  id: "dust.wood",
  of: (model) => {
    const woods = woodsOf(model);
    return {
      ...{
        status: woods.length > 0 ? "attend" : "pass",
        stake: "injury",
        subject: "woods",
        found: woods.length,
      },
      ...{ limit: 0, unit: "", holds: [], source },
      why: `dust of ${woods.join(", ")}: no more than 1 mg/m3 in the air one breathes; ${keep}`,
    };
  },
};

/** The dust of carbon rods. Found: how many rods are cut. */
export const dustOfCarbon: Check = {
  id: "dust.carbon",
  of: ({ spec }) => {
    const rods = isCarbon(spec) ? dimensionOf(spec, "rod.count") : 0;
    return {
      ...{ status: rods > 0 ? "attend" : "pass", stake: "injury", subject: "rods", found: rods },
      ...{
        limit: 0,
        unit: "",
        holds: [],
        source: `${source}; carbon fibre: general trade knowledge: default, confirm`,
      },
      why:
        rods > 0
          ? `${rods} rods of carbon are cut: their dust itches and conducts, so cut them by hand and damp, away from switches and motors; no more than 1 mg/m3 in the air one breathes; ${keep}`
          : "no carbon is cut",
    };
  },
};

function isCarbon({ partWoods }: Spec): boolean {
  return partWoods.rod.includes("carbon");
}

/** The woods of an instrument's parts, each once, in the order of their names. */
function woodsOf({ sawing, blanks, spec }: Model): string[] {
  const { fingerboard, sawn, small } = blanks;
  const all = [
    woodTaken(sawing.stock, spec.neckWoods),
    woodTaken(fingerboard, spec.boardWoods),
    ...[...sawn, ...small].map(({ stock, woods }) => woodTaken(stock, woods)),
  ];
  return [...new Set(all)].sort();
}
