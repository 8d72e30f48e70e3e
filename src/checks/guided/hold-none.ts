import { depthsIn } from "../../geometry/path-measures/depth-in.ts";
import { pathsApart } from "../../geometry/path-measures/paths-apart.ts";
import { plain } from "../../workshop/guided/fault.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import { type FixtureRule, untried } from "./fixture-check.ts";

/** How far a clamp's corner may seem to lie off the template, mm: what rounding does. */
const rounding = 1e-5;

/** Whether there are as many hold-downs as the length asks for, of those that do hold. Found: how many there are. */
export const holdNone: FixtureRule = {
  name: "hold.none",
  of: (fixture) => {
    const usual = {
      ...({ stake: "injury", unit: "", limit: 2 } as const),
      source: "published shaper guidance: a hold-down about every 300 mm, two at least",
    };
    const { holding } = fixture;
    if (holding === null) return untried(usual, "edge.none");
    const { clamps, holes, batten, room, wanted: limit } = holding;
    const screws = holes.filter(({ what }) => what === "screw" || what === "bolt").length;
    const idle = idleClamps(fixture);
    const found = clamps.length - idle.length + screws;
    const few = found < limit;
    const pressed =
      batten === null
        ? `${screws} screws or bolts and ${clamps.length} clamps hold the work on its index pins`
        : `${found} clamps press the work on its template and against the batten`;
    const add =
      room === undefined
        ? "add one of less reach or a smaller base to the shop's clamps"
        : `${limit} would fit whose base is ${plain(room.wide)} mm wide or less, of a reach of ${plain(room.reach)} mm: add such to the shop's clamps`;
    const lacking = `only ${found} of ${limit} ${batten === null ? "hold-downs" : "clamps"} fit clear of the cutter: ${add}, or screw the work from beneath`;
    if (idle.length > 0)
      return { ...{ ...usual, limit, found, status: "refuse" }, why: `${idle.join("; ")}: move it` };
    return { ...{ ...usual, status: few ? "refuse" : "pass", found, limit }, why: few ? lacking : pressed };
  },
};

/** The clamps that hold nothing, and why: off the base, in another's place, or with a pad beside the work. */
function idleClamps({ edge, outline, holding }: Fixture): string[] {
  const { clamps, batten } = holding!;
  const [onBase, onWork] = [edge?.kind === "ok" ? depthsIn(edge.template) : () => 0, depthsIn(outline)];
  return clamps.flatMap(({ base, pad }, i) => {
    const named = `clamp ${i + 1}`;
    if (base.points.some((corner) => onBase(corner) < -rounding)) return [`${named} stands off the base`];
    if (batten !== null && pathsApart(base, batten) < 0) return [`${named} stands in the batten`];
    const other = clamps.slice(0, i).findIndex((one) => pathsApart(base, one.base) < 0);
    if (other >= 0) return [`${named} stands in clamp ${other + 1}`];
    return onWork(pad) > 0 ? [] : [`${named} presses beside the work, at ${plain(pad.x)}, ${plain(pad.y)}`];
  });
}
