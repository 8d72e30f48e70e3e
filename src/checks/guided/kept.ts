import type { Path } from "../../geometry/path.ts";
import { depthsIn } from "../../geometry/path-measures/depth-in.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { plain } from "../../workshop/guided/fault.ts";
import type { Fixture, Kept } from "../../workshop/guided/fixture.ts";
import type { KeptGap } from "../../workshop/virtual-cut/virtual-cut.ts";
import { type EdgeWith, type FixtureRule, type Usual, untried } from "./fixture-check.ts";

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

/** Whether metal pins and screws stay off the cutter's circle. Found: the least room, mm. */
export const metal = clear("metal", ["pin", "screw"], {
  ...{ stake: "injury", unit: "mm", limit: 6 },
  source: "general trade knowledge: default, confirm",
});

/** What is asked of whatever hands hold: its template too, that its handholds have to lie on. */
type HandHeld = Tried & Pick<Fixture, "setUp"> & { readonly edge: EdgeWith<{ readonly template: Path }> };

/** Whether hands are far enough from the cutter along the whole path. Found: the least distance of a handhold, mm. */
export const handNear: FixtureRule<HandHeld> = {
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
    const off = offBase(fixture);
    if (off !== undefined)
      return {
        ...{ ...usual, status: "refuse", found: 0 },
        why: `${off} lies off the base: move it back onto the template`,
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

/** A handhold that doesn't lie on the template with all of it. */
function offBase({ edge, kept }: HandHeld): string | undefined {
  if (edge?.kind !== "ok") return undefined;
  const depth = depthsIn(edge.template);
  return kept.find(
    ({ what, path }) =>
      what === "handhold" &&
      segmentsOf(path).some((segment) =>
        [0, 0.25, 0.5, 0.75].some((share) => depth(pointOn(segment, share)) < 0),
      ),
  )?.id;
}
