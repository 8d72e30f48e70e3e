import { extentsOf, pathLength } from "../../geometry/measure.ts";
import { placeAlong } from "../../geometry/path-measures/place-along.ts";
import type { Point } from "../../geometry/point.ts";
import { windingsOf } from "../../geometry/winding-at.ts";
import { plain } from "../../workshop/guided/fault.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import { type FixtureRule, type Judged, type Usual, untried } from "./fixture-check.ts";
import { shareOn } from "./share-on.ts";

/** How many places of the edge are tried, in how many rings and rays a base is looked at, and how far from the cutter a template may reach over a table of no known size, mm (G: default, confirm). */
const looks = { along: 24, rings: 10, rays: 24, reach: 600 } as const;

type Ready = Fixture & {
  readonly edge: Extract<NonNullable<Fixture["edge"]>, { kind: "ok" }>;
  readonly setUp: NonNullable<Fixture["setUp"]>;
};

/**
 * Whether what slides stays flat. A hand-held router's base rests on more than half of itself. A fixture that is pushed by hand is no taller than
 * it is wide, and doesn't hang far off the table. Found: the least share of the base, or how tall or how far, mm.
 */
export const tip: FixtureRule = {
  name: "tip",
  of: (fixture) => {
    const usual: Usual = {
      ...{ stake: "injury", unit: "mm", limit: looks.reach },
      source: "published shaper guidance; half of a base, sizes: general trade knowledge: default, confirm",
    };
    const { edge, setUp } = fixture;
    if (edge?.kind !== "ok" || setUp === null) return untried(usual, "edge.none");
    const ready = { ...fixture, edge, setUp };
    return setUp.machine.moves === "work" ? slides(ready, usual) : rests(ready, usual);
  },
};

function slides({ edge, thickness, sheet }: Ready, usual: Usual): Judged {
  const { minX, maxX, minY, maxY } = extentsOf([edge.template])!;
  const narrow = Math.min(maxX - minX, maxY - minY);
  const tall = thickness + (sheet?.kind === "ok" ? sheet.thickness : 0);
  if (tall > narrow)
    return {
      ...{ ...usual, status: "refuse", found: tall, limit: narrow },
      why: `work and template stand ${plain(tall)} mm high on a base ${plain(narrow)} mm across: widen the base to ${plain(tall)} mm or more`,
    };
  const reach = Math.max(
    ...placesAlong(edge.edge).map(({ at }) =>
      Math.max(...edge.template.points.map(({ x, y }) => Math.hypot(x - at.x, y - at.y))),
    ),
  );
  const far = reach > looks.reach;
  return {
    ...{ ...usual, status: far ? "attend" : "pass", found: reach },
    why: far
      ? `the fixture reaches up to ${plain(reach)} mm from the cutter and the shop's file says no table's size: put a stand beside a smaller table`
      : `the fixture reaches ${plain(reach)} mm from the cutter at most and is wider than it is tall`,
  };
}

function rests({ edge, setUp: { machine, guide } }: Ready, usual: Usual): Judged {
  const share: Usual = { ...usual, unit: "", limit: 0.5 };
  if (machine.kind !== "router" || machine.mount !== "hand")
    return { ...share, status: "pass", found: 1, why: `${machine.id} stands by itself` };
  if (machine.base === undefined)
    return {
      ...{ ...share, status: "attend", found: 0 },
      why: `the shop's file doesn't say how wide the base of ${machine.id} is: measure it, and write it as base`,
    };
  const onTemplate = windingsOf([edge.template]);
  const radius = machine.base / 2;
  const found = Math.min(
    ...placesAlong(edge.edge).map(({ at, right }) =>
      shareOn(
        { x: at.x + (right.x * guide.diameter) / 2, y: at.y + (right.y * guide.diameter) / 2 },
        radius,
        (place) => onTemplate(place) !== 0,
        looks,
      ),
    ),
  );
  const tips = found <= share.limit;
  return {
    ...{ ...share, status: tips ? "refuse" : "pass", found },
    why: tips
      ? `only ${Math.floor(found * 100)} % of the base of ${machine.id} rests on the template: fit an outrigger as thick as that under its outer side, or use a table`
      : `${Math.floor(found * 100)} % of the base of ${machine.id} rests on the template at least`,
  };
}

/** Places along an edge with the template on its left, each with the way to its right. */
function placesAlong(edge: Ready["edge"]["edge"]): { readonly at: Point; readonly right: Point }[] {
  const length = pathLength(edge);
  return Array.from({ length: looks.along + 1 }, (_, i) =>
    placeAlong(edge, (length * i) / looks.along),
  ).flatMap((place) =>
    place.kind === "ok"
      ? [{ at: place.point, right: { x: place.direction.y, y: 0 - place.direction.x } }]
      : [],
  );
}
