import { plain } from "../../workshop/guided/fault.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import type { HardPlace } from "../../workshop/guided/hard-places.ts";
import { type EdgeWith, type FixtureRule, type Judged, ofSetUp, untried } from "./fixture-check.ts";

/** Whether the cutter is long enough for the thickness where it cuts. Found: its cutting length, mm. */
export const cutterShort = ofSetUp<Pick<Fixture, "setUp" | "thickness">>(
  "cutter.short",
  {
    stake: "injury",
    unit: "mm",
    limit: 0,
    source: "general trade knowledge, thickness + 3: default, confirm",
  },
  ({ cutter }, { thickness }) => {
    const limit = thickness + 3;
    const short = cutter.length < limit - 1e-6;
    return {
      ...{ status: short ? "refuse" : "pass", found: cutter.length, limit },
      why: short
        ? `${cutter.id} cuts ${plain(cutter.length)} mm of ${plain(thickness)}: take one that cuts ${plain(limit)} mm, or saw to ${plain(cutter.length - 3)} mm first and pack the work up`
        : `${cutter.id} cuts ${plain(cutter.length)} mm where the work is ${plain(thickness)} thick`,
    };
  },
);

/** Whether a tool that is fed by hand is marked for that. Found: 1 where it is. */
export const cutterFeed = ofSetUp(
  "cutter.feed",
  { stake: "injury", unit: "", limit: 1, source: "EN 847-1; HSE WIS18" },
  ({ machine, cutter }) => ({
    ...{ status: cutter.feed === "manual" ? "pass" : "refuse", found: cutter.feed === "manual" ? 1 : 0 },
    why:
      cutter.feed === "manual"
        ? `${cutter.id} is marked for manual feed`
        : `${cutter.id} is marked for mechanical feed, and ${machine.id} is fed by hand: take a cutter marked manual`,
  }),
);

/** What hard places are told of. */
type Placed = Pick<Fixture, "setUp" | "chosen"> & {
  readonly edge: EdgeWith<{ readonly places: readonly HardPlace[] }>;
};

/** Whether the cutter gets into every hollow of the cut edges, but for those left to the hand. Found: how deep it leaves wood there, mm. */
export const cutterLarge: FixtureRule<Placed> = {
  name: "cutter.large",
  of: (fixture) => placesRule(fixture, "hollow", "cutter.large"),
};

/** Whether the guide lets every outward bend come out, but for those left to the hand. Found: how deep it is rounded, mm. */
export const guideLarge: FixtureRule<Placed> = {
  name: "guide.large",
  of: (fixture) => placesRule(fixture, "outward", "guide.large"),
};

function placesRule(fixture: Placed, kind: HardPlace["kind"], check: string): Judged {
  const usual = {
    ...({ stake: "spoilage", unit: "mm", limit: 0.01 } as const),
    source: "what the finished edge is, compared with what this cutter and guide can bring out",
  };
  const { edge, setUp, chosen } = fixture;
  if (edge?.kind !== "ok" || setUp === null) return untried(usual, "edge.none");
  const all = edge.places.filter((place) => place.kind === kind);
  const open = all.filter(({ hand }) => !hand);
  const depth = ({ depth: deep }: HardPlace) => deep ?? setUp.cutter.diameter;
  const found = Math.max(0, ...open.map(depth));
  if (open.length === 0) {
    const left =
      all.length === 0 ? "every place is brought out" : `${all.length} places are left to the hand`;
    return { ...usual, status: "pass", found, why: left };
  }
  const said = chosen.faults.find((fault) => fault.check === check)?.why;
  const mend = said ?? "take a smaller cutter or guide, or mark the edge finish: hand";
  const at = open.map(({ x, y, depth: deep, length }) => {
    const left = deep === null ? "not reached" : `${plain(deep)} deep`;
    return `at ${plain(x)}, ${plain(y)} over ${plain(length)} mm, ${left}`;
  });
  const what = kind === "hollow" ? "leaves wood" : "rounds";
  return { ...usual, status: "refuse", found, why: `${setUp.cutter.id} ${what} ${at.join("; ")}: ${mend}` };
}
