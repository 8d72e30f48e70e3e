import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import type { Instrument } from "../../instrument/instrument.ts";
import { neckFixture as file } from "../../order/fixture-names.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Store } from "../../step/store.ts";
import { blankPlace } from "../blank-place.ts";
import { blankMark } from "./blank-mark.ts";
import { cutRuns } from "./cut-runs.ts";
import type { Fixture } from "./fixture.ts";
import { guidedFixture } from "./guided-fixture.ts";
import type { GuidedWork, HeldByPins } from "./guided-work.ts";
import { type LongEdge, longEdgeUses, splitAt } from "./half-run.ts";
import { lessAgainst } from "./less-against.ts";
import { neckHolds, neckScrews } from "./neck-holds.ts";
import type { FaceUp } from "./seen-outline.ts";
import { wasteBeyond } from "./waste-beyond.ts";

/**
 * The fixture that both edges of a neck's plan are shaped in: front up for one, then turned over about its length, back up for the other, so that both are
 * cut the same way. Of the two edges that may lie at the cutter it is the one that is cut less against the grain, which is from core
 * to nut. Its outlines must be there.
 */
export function neckFixture(spec: Spec, made: Instrument, store: Store): Fixture {
  const of = (edge: LongEdge) => guidedFixture(neckWork(spec, made, edge), spec, store);
  return lessAgainst(of("low"), () => of("high"));
}

function neckWork(spec: Spec, made: Instrument, edge: LongEdge): GuidedWork {
  const of = (id: string) => dimensionOf(spec, id);
  const { plan, side } = made.neckProfile;
  const place = blankPlace(made.neckBlank, plan, side);
  const handTo = spec.headFinish === "hand" ? of("neck.station.nut") : null;
  const outline = handTo === null ? plan : splitAt(plan, handTo);
  const xs = outline.points.map(({ x }) => x);
  const between = [
    Math.min(...xs) + 0.9 * of("head.corner") + 0.01,
    Math.max(...xs) - 0.9 * of("neck.corner") - 0.01,
  ] as const;
  const seenWith = (up: FaceUp) => {
    const path = isTurned(spec, up) ? mirrored(outline, "y") : outline;
    const uses = longEdgeUses(path, edge, between, handTo);
    return { path, uses, run: cutRuns(path, uses)[0]! };
  };
  const [front, back] = [seenWith("front"), seenWith("back")];
  const away = edge === "low" ? 1 : -1;
  const y = away * (edge === "low" ? place.maxY : -place.minY);
  return {
    ...{ file, part: "neck", kind: "shaper", up: "front" },
    ...{ outline: front.path, uses: front.uses, again: back.run },
    ...{ thickness: made.neckBlank.thickness, allowance: of("saw.allowance") },
    base: { from: { x: place.minX, y }, to: { x: place.maxX, y } },
    joined: cutRuns(front.path, longEdgeUses(front.path, edge === "low" ? "high" : "low", between, null)).map(
      ({ path }) => path,
    ),
    waste: wasteBeyond(front.run.path.points, place),
    held: heldBy(spec, made, edge, blankMark(front.run.path.points, place, y)),
  };
}

/** Whether y is turned round as it lies before whoever cuts: for a left hand, and with the back up. */
function isTurned({ hand }: Spec, up: FaceUp): boolean {
  return (hand === "left") !== (up === "back");
}

function heldBy(spec: Spec, made: Instrument, edge: LongEdge, mark: Path): HeldByPins {
  const { plan, side } = made.neckProfile;
  const place = blankPlace(made.neckBlank, plan, side);
  const { neckPins: pins, neckRods: rods } = made;
  const away = edge === "low" ? 1 : -1;
  const screws = neckHolds({ place, side, pins, rods, core: dimensionOf(spec, "core.start") }).map((places) =>
    places.map(({ x, y }) => ({ x, y: away * y })),
  );
  const through = pins.filter(({ depth }) => depth === "through");
  const [first, second] =
    (edge === "low") === isTurned(spec, "front") ? ["treble", "bass"] : ["bass", "treble"];
  return {
    ...{
      by: "pins",
      screws,
      screw: { what: "screw", diameter: neckScrews.diameter },
      clamps: false,
      wanted: screws.length,
    },
    marks: [mark],
    pins: through.map(({ x, y, diameter }) => ({ at: { x, y }, diameter })),
    said: [
      `used twice: 1. front up, ${first} edge at the cutter; 2. turned over about its length, back up, ${second} edge at the cutter; both are cut from core to nut`,
      `on the index pins through the waste, ${through.map(({ id, diameter }) => `${id} ${diameter}`).join(", ")}: unlike, so that it goes on one way round`,
      `screws of ${neckScrews.diameter} or less through the template, heads sunk, ${neckScrews.into} into the work at most: waste at both ends, footprint under the board, waste over the core; out before any later cut`,
      spec.fixtures[file]?.template === "under"
        ? "the template lies on the table, the work on it: keep both down on the table over all of their way, hands on the handholds"
        : "a packer as thick as the work under the handholds' end keeps the fixture level on the table; it stays on the handholds' side",
    ],
  };
}
