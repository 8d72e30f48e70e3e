import { extentsOf } from "../../geometry/measure.ts";
import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import { ordinatesAt } from "../../geometry/path-measures/ordinates-at.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { type Body, madeBody } from "../../instrument/body/body.ts";
import { bodyFixtures } from "../../order/fixture-names.ts";
import type { Side } from "../../order/side.ts";
import { dimensionOf, type Spec, type SpecBody } from "../../order/spec.ts";
import type { Store } from "../../step/store.ts";
import { cutRuns, type EdgeUse } from "./cut-runs.ts";
import type { Fixture } from "./fixture.ts";
import { guidedFixture } from "./guided-fixture.ts";
import type { GuidedWork, HeldByPins } from "./guided-work.ts";
import { middleSplit } from "./half-run.ts";
import { sawWander } from "./passes.ts";
import type { FaceUp } from "./seen-outline.ts";

/**
 * A body's two pins, its screws, how deep these go at most, how far pins and screws stand from the ends of the core's room and screws from its
 * middle, and what the room still takes out under them, mm (G: default, confirm).
 */
const sizes = { small: 6, large: 8, screw: 5, into: 12, pin: 18, along: 60, beside: 12, floor: 2 } as const;

/**
 * The fixture that one half of a body's outline is routed in, from the middle of its head end to the middle of its tail, run-in and run-out square to the
 * centreline there. The body is held from inside: its front lies on the template, with pins and screws in the wood that the core's
 * room takes out later, so the back is up where the template lies under the work and the front where it lies on it. Outline and room
 * must be there.
 */
export function bodyFixture(side: Side, spec: Spec, body: Body, store: Store): Fixture {
  const of = (up: FaceUp) => guidedFixture(bodyWork(side, spec, body, up), spec, store);
  const under = of("back");
  const guide = under.setUp?.guide.kind ?? "bearing";
  return guide === "bearing" ? under : of("front");
}

function bodyWork(side: Side, spec: Spec, body: Body, up: FaceUp): GuidedWork {
  const of = (id: string) => dimensionOf(spec, id);
  const { outline } = madeBody(body);
  const turned = (spec.hand === "left") !== (up === "back");
  const whole = middleSplit(outline.path);
  const path = turned ? mirrored(whole, "y") : whole;
  const cut = (side === "bass") !== turned ? -1 : 1;
  const { cut: edges } = spec.body!;
  const { minX, maxX, minY, maxY } = extentsOf([path])!;
  const usesOf = (half: number): EdgeUse[] =>
    segmentsOf(path).map((segment) => {
      const { x, y } = pointOn(segment, 0.5);
      const isEnd = x < minX + 1e-6;
      return y * half > 0 && (!isEnd || edges.includes("head")) ? "cut" : "joined";
    });
  const run = cutRuns(path, usesOf(cut))[0]!.path.points;
  const removed = of("saw.allowance") + sawWander;
  const y = cut < 0 ? maxY + of("saw.allowance") : minY - of("saw.allowance");
  return {
    ...{ file: bodyFixtures[side], part: "body", kind: "router", up },
    ...{ outline: path, uses: usesOf(cut), again: null, waste: woodBeyond(path, cut, run, removed) },
    ...{ thickness: of("body.thickness"), allowance: of("saw.allowance") },
    base: { from: { x: minX, y }, to: { x: maxX, y } },
    joined: cutRuns(path, usesOf(-cut)).map((run) => run.path),
    held: heldFromInside(side, spec, body),
  };
}

/** How far sawn wood of the other half lies beside the square ends of a run, first and last: as far as its outline is within what is removed of them. */
function woodBeyond(
  path: Path,
  cut: number,
  run: readonly Point[],
  removed: number,
): readonly [number, number] {
  const middle = (run[0]!.x + run.at(-1)!.x) / 2;
  const beside = ({ x }: Point) => {
    const at = x < middle ? x + removed : x - removed;
    return Math.max(0, ...ordinatesAt(segmentsOf(path), at).map((y) => -cut * y)) + removed;
  };
  return [beside(run[0]!), beside(run.at(-1)!)];
}

/** Pins on the centreline and screws on both sides of it, in the core's room; none where that is too shallow for a screw. */
function heldFromInside(side: Side, spec: Spec, body: Body): HeldByPins {
  const { recess } = madeBody(body);
  const depth =
    (spec.body!.core === "through" ? dimensionOf(spec, "body.thickness") : recess.depth) - sizes.floor;
  const into = Math.min(sizes.into, Math.floor(depth));
  const from = dimensionOf(spec, "body.start");
  const at = (share: "head" | "tail", x: number) => (share === "head" ? from + x : recess.end - x);
  const { small, large } = sizes;
  const inside = [sizes.beside, -sizes.beside].filter((y) => Math.abs(y) + sizes.screw < recess.half.head);
  const screws = (["head", "tail"] as const).flatMap((end) =>
    inside.map((y) => [{ x: at(end, sizes.along), y }]),
  );
  return {
    ...{ by: "pins", clamps: false, screw: { what: "screw", diameter: sizes.screw } },
    marks: [recess.side, mirrored(recess.side, "y")],
    pins: [
      { at: { x: at("head", sizes.pin), y: 0 }, diameter: small },
      { at: { x: at("tail", sizes.pin), y: 0 }, diameter: large },
    ],
    ...{ screws: into < 8 ? [] : screws, wanted: 4 },
    said: [
      halfText(side, spec.body!),
      `held from inside, front on the template, before the core's room is cut: pins and screws, heads sunk, ${into} deep at most in the wood that the room takes out; no clamps`,
      `pins ${small} to the head and ${large} to the tail: unlike, so that it goes on one way round`,
    ],
  };
}

/** Which part of the outline this set-up cuts, and what becomes of the other half. */
function halfText(side: Side, { cut }: Pick<SpecBody, "cut">): string {
  const from = cut.includes("head") ? "the head end's middle" : "the head end's corner";
  return cut.includes(side === "bass" ? "treble" : "bass")
    ? `cut in two set-ups: this one the ${side} half, from ${from} to the tail's middle; the other on its own fixture, on the same pins`
    : `cut on this side alone: the ${side} half, from ${from} to the tail's middle; the other keeps the blank's edge`;
}
