import { mirrored } from "../../geometry/mirror.ts";
import type { Instrument } from "../../instrument/instrument.ts";
import { boardFixture as file } from "../../order/fixture-names.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Store } from "../../step/store.ts";
import { blankMark } from "./blank-mark.ts";
import { cutRuns } from "./cut-runs.ts";
import type { Fixture } from "./fixture.ts";
import { guidedFixture } from "./guided-fixture.ts";
import type { GuidedWork, HeldByPins } from "./guided-work.ts";
import { type LongEdge, longEdgeUses } from "./half-run.ts";
import { holdDownEvery } from "./holding.ts";
import { lessAgainst } from "./less-against.ts";
import { wasteBeyond } from "./waste-beyond.ts";

/** The index pins in a board's waste before the nut and past the end, the bolts beside them, and how far beside, mm: the waste is narrow (G: default, confirm). */
const sizes = { nut: 5, end: 4, bolt: 4, beside: [9, 10, 11] } as const;

/**
 * The fixture that both straight sides of a fingerboard are routed in, while its blank is flat on both faces: top up for one, then turned over about
 * its length for the other, so that both are cut from the wide end to the nut. Its outline must be there.
 */
export function boardFixture(spec: Spec, made: Instrument, store: Store): Fixture {
  const of = (edge: LongEdge) => guidedFixture(boardWork(spec, made, edge), spec, store);
  return lessAgainst(of("low"), () => of("high"));
}

function boardWork(spec: Spec, { board, boardBlank, taper }: Instrument, edge: LongEdge): GuidedWork {
  if (board.kind !== "ok") throw new RangeError(`the fingerboard has no outline: ${board.kind}`);
  const between = [0, taper.length - 0.9 * dimensionOf(spec, "fingerboard.corner") - 0.01] as const;
  const turned = mirrored(board.path, "y");
  const [front, back] = spec.hand === "left" ? [turned, board.path] : [board.path, turned];
  const uses = longEdgeUses(front, edge, between, null);
  const again = cutRuns(back, longEdgeUses(back, edge, between, null))[0]!;
  const run = cutRuns(front, uses)[0]!.path.points;
  const past = (boardBlank.length - taper.length) / 2;
  const place = { minX: -past, maxX: taper.length + past };
  const away = edge === "low" ? 1 : -1;
  const y = (away * boardBlank.width) / 2;
  const beside = (x: number) => sizes.beside.map((far) => ({ x, y: away * far }));
  const held: HeldByPins = {
    ...{
      by: "pins",
      clamps: true,
      screw: { what: "bolt", diameter: sizes.bolt },
      marks: [blankMark(run, place, y)],
    },
    pins: [
      { at: { x: -past / 2, y: 0 }, diameter: sizes.nut },
      { at: { x: taper.length + past / 2, y: 0 }, diameter: sizes.end },
    ],
    screws: [beside(-past / 2), beside(taper.length + past / 2)],
    wanted: 1 + Math.ceil(boardBlank.length / holdDownEvery),
    said: [
      "used twice, blank flat on both faces and sawn to its lines: 1. top up; 2. turned over about its length; both sides are cut from the wide end to the nut",
      `on index pins through the waste, ${sizes.nut} before the nut and ${sizes.end} past the end: unlike, so that it goes on one way round`,
      `bolts of ${sizes.bolt} through the waste beside the pins, large washers over them; never loose, always in this fixture`,
    ],
  };
  return {
    ...{ file, part: "fingerboard", kind: "router", up: "front" },
    ...{ outline: front, uses, again, held },
    joined: cutRuns(front, longEdgeUses(front, edge === "low" ? "high" : "low", between, null)).map(
      ({ path }) => path,
    ),
    ...{ thickness: boardBlank.thickness, allowance: dimensionOf(spec, "saw.allowance") },
    base: { from: { x: place.minX, y }, to: { x: place.maxX, y } },
    waste: wasteBeyond(run, place),
  };
}
