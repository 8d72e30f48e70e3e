import type { Path } from "../../../geometry/path.ts";
import type { Point } from "../../../geometry/point.ts";
import type { Fixture } from "../../../workshop/guided/fixture.ts";
import { runLength } from "../../../workshop/guided/run-in.ts";
import { inMm } from "../../../workshop/sequence/work-step.ts";
import { inCapitals } from "../bench/in-capitals.ts";
import type { GuidedPicture, Way } from "./guided-picture.ts";

/** How long arrows are and how far the broad one stands from the cutter, mm. */
const sizes = { arrow: 22, push: 60, aside: 24 } as const;

/** A fixture with all that was worked out of it. */
export type MadeFixture = Fixture & {
  readonly setUp: NonNullable<Fixture["setUp"]>;
  readonly edge: Extract<NonNullable<Fixture["edge"]>, { kind: "ok" }>;
  readonly feed: NonNullable<Fixture["feed"]>;
  readonly holding: NonNullable<Fixture["holding"]>;
};

/** Whether a fixture has a set-up, a guided edge and what holds its work: without them there is nothing to draw. */
export function isMade(fixture: Fixture): fixture is MadeFixture {
  const { setUp, edge, feed, holding } = fixture;
  return setUp !== null && edge?.kind === "ok" && feed !== null && holding !== null;
}

/** The picture of a fixture's set-up. */
export function pictureOf(fixture: MadeFixture): GuidedPicture {
  const { setUp, edge, feed, holding, outline } = fixture;
  const { machine, cutter, guide } = setUp;
  const ends = (["first", "last"] as const).map((end) => endOf(edge.edge, end, guide.diameter / 2));
  const [first, last] = ends as [End, End];
  const [start, end] = feed.way === "along" ? [first, last] : [last, first];
  const led = inMm(runLength(guide.diameter));
  const work = machine.moves === "work";
  return {
    ...{
      template: edge.template,
      edge: edge.edge,
      part: outline,
      run: fixture.run.path,
      batten: holding.batten,
    },
    marks: holding.marks,
    clamps: holding.clamps.map(({ id, base, arm }) => ({ path: base, arm, name: `CLAMP ${inCapitals(id)}` })),
    handholds: holding.handholds.map(({ path }, i) => ({ path, name: handName(fixture, i) })),
    holes: holding.holes
      .filter(({ what }) => what !== "handhold")
      .map(({ at, diameter, what }) => ({ at, diameter, name: inCapitals(what) })),
    cutter: { diameter: cutter.diameter, name: `CUTTER ${inMm(cutter.diameter)}` },
    guide: { diameter: guide.diameter, name: `${inCapitals(guide.kind)} ${inMm(guide.diameter)}` },
    ...{ start: start.at, end: end.at, rotation: machine.rotation },
    startWords: `START ON THE RUN-IN, ${led} LONG`,
    endWords: `RUN-OUT, ${led} LONG, ENDS HERE`,
    tool: feed.tool.map(({ at, way }) => lineAt(at, way, sizes.arrow)),
    push: {
      way: pushWay(fixture, start, cutter.diameter / 2),
      words: work ? "PUSH THE WORK THIS WAY" : "PUSH THE TOOL THIS WAY",
    },
    grain: 0,
  };
}

type End = { readonly at: Point; readonly out: Point };

/** The middle of a guide that touches the guided edge at one of its ends, and the way out of the template there. */
function endOf({ points }: Path, end: "first" | "last", radius: number): End {
  const [from, to] = end === "first" ? [points[0]!, points[1]!] : [points.at(-2)!, points.at(-1)!];
  const at = end === "first" ? from : to;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const out = { x: (to.y - from.y) / length, y: -(to.x - from.x) / length };
  return { at: { x: at.x + out.x * radius, y: at.y + out.y * radius }, out };
}

function lineAt({ x, y }: Point, way: Point, long: number): Way {
  const [dx, dy] = [(way.x * long) / 2, (way.y * long) / 2];
  return { from: { x: x - dx, y: y - dy }, to: { x: x + dx, y: y + dy } };
}

/** The broad arrow beside the cutter's beginning: the work goes the other way than the cutter seems to, a tool goes that way itself. */
function pushWay({ feed, setUp }: MadeFixture, { at, out }: End, radius: number): Way {
  const near = [...feed.tool].sort(
    (a, b) => Math.hypot(a.at.x - at.x, a.at.y - at.y) - Math.hypot(b.at.x - at.x, b.at.y - at.y),
  )[0]!;
  const sign = setUp.machine.moves === "work" ? -1 : 1;
  const way = { x: sign * near.way.x, y: sign * near.way.y };
  // Beside the run-in and before the cutter, where no arrow of its own stands and no name of its circle leads across.
  const away = radius + sizes.aside;
  const middle = {
    x: at.x + out.x * away - near.way.x * sizes.push,
    y: at.y + out.y * away - near.way.y * sizes.push,
  };
  return lineAt(middle, way, sizes.push);
}

/** How far a handhold stays from the cutter all along, as the virtual cut found it. */
function handName({ cut }: MadeFixture, i: number): string {
  const gap = cut?.kind === "ok" ? cut.kept.find(({ id }) => id === `handhold ${i + 1}`)?.gap : undefined;
  return gap === undefined ? "HANDHOLD" : `HANDHOLD, ${inMm(gap)} FROM THE CUTTER`;
}
