import { plain } from "../../workshop/guided/fault.ts";
import type { Fixture, Kept } from "../../workshop/guided/fixture.ts";
import type { KeptGap } from "../../workshop/virtual-cut/virtual-cut.ts";
import { type FixtureRule, type Usual, untried } from "./fixture-check.ts";

/** What the virtual cut of something is told of. */
type Tried = Pick<Fixture, "cut" | "kept">;

/** The gaps of one kind of thing that the cutter must not come near, by the virtual cut; nothing where it could not be tried. */
function gapsOf({ cut, kept }: Tried, what: Kept["what"]): readonly KeptGap[] | undefined {
  if (cut?.kind !== "ok") return undefined;
  const ids = kept.filter((one) => one.what === what).map(({ id }) => id);
  return cut.kept.filter(({ id }) => ids.includes(id));
}

function clear(name: string, what: readonly Kept["what"][], usual: Usual): FixtureRule<Tried> {
  return {
    name,
    of: (fixture) => {
      const gaps = what.map((one) => gapsOf(fixture, one));
      if (gaps.some((one) => one === undefined)) return untried(usual, "edge.none");
      const near = (gaps.flat() as KeptGap[]).sort((a, b) => a.gap - a.margin - (b.gap - b.margin))[0];
      if (near === undefined)
        return {
          ...usual,
          status: "pass",
          found: usual.limit,
          why: `there is no ${what.join(" or ")} on it`,
        };
      const { id, gap, margin, at } = near;
      const over = gap < margin - 1e-3;
      return {
        ...{ ...usual, status: over ? "refuse" : "pass", found: gap, limit: margin },
        why: over
          ? `the cutter passes ${id} at ${plain(gap)} mm, at ${plain(at.x)}, ${plain(at.y)}: move it ${plain(margin - gap)} mm away from the path`
          : `the cutter passes nothing of these nearer than ${plain(gap)} mm, ${id}`,
      };
    },
  };
}

/** Whether clamps and stops stay off the cutter's circle along the whole path. Found: the least room, mm. */
export const clampSwept = clear("clamp.swept", ["clamp", "stop"], {
  ...{ stake: "injury", unit: "mm", limit: 6 },
  source: "published shaper guidance; 6 mm: default, confirm",
});

/** Whether metal pins stay off the cutter's circle. Found: the least room, mm. */
export const metal = clear("metal", ["pin"], {
  ...{ stake: "injury", unit: "mm", limit: 6 },
  source: "general trade knowledge: default, confirm",
});

/** Whether hands are far enough from the cutter along the whole path. Found: the least distance of a handhold, mm. */
export const handNear: FixtureRule<Tried & Pick<Fixture, "setUp">> = {
  name: "hand.near",
  of: (fixture) => {
    const usual = {
      ...({ stake: "injury", unit: "mm", limit: 152 } as const),
      source: "152: newer manuals; 305: older ones, the default here",
    };
    const gaps = gapsOf(fixture, "handhold");
    if (gaps === undefined || fixture.setUp === null) return untried(usual, "edge.none");
    if (fixture.setUp.machine.moves === "tool")
      return {
        ...usual,
        status: "pass",
        found: usual.limit,
        why: "hands are on the machine's own grips: see its manual",
      };
    if (gaps.length === 0)
      return {
        ...usual,
        status: "refuse",
        found: 0,
        why: "there is no handhold: put two at 305 mm from the cutter",
      };
    const found = Math.min(...gaps.map(({ gap }) => gap));
    const status = found < usual.limit ? "refuse" : found < 305 - 1e-3 ? "attend" : "pass";
    return {
      ...{ ...usual, status, found },
      why:
        status === "pass"
          ? `handholds stay ${plain(found)} mm or more from the cutter`
          : `a handhold comes within ${plain(found)} mm of the cutter: move it ${plain((status === "refuse" ? 152 : 305) - found)} mm away`,
    };
  },
};

/** Whether there are as many clamps as the length asks for. Found: how many there are. */
export const holdNone: FixtureRule<{
  readonly holding: { readonly clamps: readonly unknown[]; readonly wanted: number } | null;
}> = {
  name: "hold.none",
  of: ({ holding }) => {
    const usual = {
      ...({ stake: "injury", unit: "", limit: 2 } as const),
      source: "published shaper guidance: a hold-down about every 300 mm, two at least",
    };
    if (holding === null) return untried(usual, "edge.none");
    const [found, limit] = [holding.clamps.length, holding.wanted];
    const few = found < limit;
    return {
      ...{ ...usual, status: few ? "refuse" : "pass", found, limit },
      why: few
        ? `only ${found} of ${limit} clamps fit clear of the cutter: add one of less reach or a smaller base to the shop's clamps, or screw the work from beneath`
        : `${found} clamps press the work on its template and against the batten`,
    };
  },
};
