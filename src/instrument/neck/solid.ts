import { intersection } from "../../geometry/boolean/intersection.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import type { Frame } from "../../geometry/solid/frame.ts";
import type { Outline, Section, Solid } from "../../geometry/solid/solid.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";
import { type CoreFrame, frontAt } from "../core/frame.ts";
import type { Drilled } from "../drilled.ts";
import type { Pocket } from "../pocket.ts";
import { cuttersOf } from "./cutters.ts";
import { type ProfileInput, profileOf } from "./profile.ts";
import { profilePlaces } from "./profile-places.ts";
import { sectionPath } from "./section.ts";

/**
 * A round hole: where its axis leaves the face, which way it points out of the wood, and its depth, mm; its diameter at the
 * face and at its bottom, which is another where it is tapered. The axis may point anywhere.
 */
export type Hole = {
  readonly at: Vec3;
  readonly out: Vec3;
  readonly diameter: number;
  readonly bottom: number;
  readonly depth: number;
};

/** What the neck's solid follows from; mm and degrees. `channels` are sunk from z = 0, `pockets` into the core, `coreDepth` thick, and bores `drilled` through it, in its own frame. */
export type NeckSolidInput = {
  readonly profile: ProfileInput;
  readonly stations: readonly number[];
  readonly core: CoreFrame;
  readonly holes: readonly Hole[];
  readonly channels: readonly { readonly path: Path; readonly depth: number }[];
  readonly pockets: readonly Pocket[];
  readonly drilled: readonly Drilled[];
  readonly coreDepth: number;
};

/** How far the blocks of head and core reach into the carved piece, which is as good as a box there, mm. */
const lap = 0.02;

/** How far a cutter stands out of the face that it enters, mm. */
const clear = 1;

/** Side outlines lie in x and z; raised from them is toward the bass side. */
const fromTreble = (y: number): Frame => ({
  origin: { x: 0, y, z: 0 },
  u: { x: 1, y: 0, z: 0 },
  v: { x: 0, y: 0, z: 1 },
  w: { x: 0, y: -1, z: 0 },
});

/**
 * The finished neck: head and core as the two outlines saw them out of the blank, and between them the carved piece, lofted
 * through its sections; holes, channels and pockets cut. As the instrument lies.
 */
export const neckSolid = step("neck.solid", 4, (given: NeckSolidInput): Solid => {
  const { profile } = given;
  const { minX, maxX, minY, maxY } = extentsOf([profile.plan])!;
  const { minY: lowest, maxY: highest } = extentsOf([profile.side])!;
  const across = { treble: maxY + clear, wide: maxY - minY + 2 * clear };
  const window = (fromX: number, toX: number): Outline => ({
    ...{ outer: rectangle(fromX, lowest - clear, toX, highest + clear), holes: [] },
  });
  const ends = [
    window(minX - clear, profile.head.box + lap),
    window(profile.core.box - lap, maxX + clear),
  ].flatMap((part) => within(profile.side, part));
  const blocks: Solid = {
    kind: "intersect",
    solids: [
      {
        kind: "extrude",
        outlines: [{ outer: profile.plan, holes: [] }],
        base: lowest - clear,
        height: highest - lowest + 2 * clear,
      },
      raised(ends, across),
    ],
  };
  // Each piece is cut before they are joined, by what reaches it, and not the whole of them once more.
  const cutters = cuttersOf(given);
  const piece = carvedPiece(given);
  const [from, to] = [profile.head.box, profile.core.box];
  const ofPiece = cutters.filter((cutter) => cutter.to > from && cutter.from < to);
  const ofBlocks = cutters.filter((cutter) => cutter.from < from + lap || cutter.to > to - lap);
  return {
    kind: "union",
    solids: [
      { kind: "cut", from: blocks, by: ofBlocks.map(({ solid }) => solid) },
      {
        ...{ kind: "cut", from: piece },
        by: [...coreFront(given, across), ...ofPiece.map(({ solid }) => solid)],
      },
    ],
  };
});

type Across = { readonly treble: number; readonly wide: number };

/** The piece between head and core, lofted; its front is still flat all along. */
function carvedPiece({ profile, stations }: NeckSolidInput): Solid {
  const also = [-profile.nutThickness, 0, profile.head.whole, profile.core.whole, ...stations];
  const places = profilePlaces(profileOf(profile), profile.head.box, profile.core.box, also);
  const sections = places.map(({ x, top, form }): Section => {
    const frame: Frame = {
      origin: { x, y: 0, z: top },
      u: { x: 0, y: 1, z: 0 },
      v: { x: 0, y: 0, z: 1 },
      w: { x: 1, y: 0, z: 0 },
    };
    return { kind: "path", path: sectionPath(form), frame };
  });
  return { kind: "loft", sections };
}

/** What is cut off the carved piece over the core's front, if that begins on it. */
function coreFront({ profile, core }: NeckSolidInput, across: Across): Solid[] {
  const beyond = profile.core.box + clear;
  if (core.start >= beyond) return [];
  const over: Path = {
    closed: true,
    points: [
      { x: core.start, y: -core.drop, bulge: 0 },
      { x: beyond, y: frontAt(core, beyond), bulge: 0 },
      { x: beyond, y: clear, bulge: 0 },
      { x: core.start, y: clear, bulge: 0 },
    ],
  };
  return [raised([{ outer: over, holes: [] }], across)];
}

function raised(outlines: readonly Outline[], { treble, wide }: Across): Solid {
  return { kind: "place", solid: { kind: "extrude", outlines, height: wide }, frame: fromTreble(treble) };
}

function within(side: Path, window: Outline): readonly Outline[] {
  const found = intersection([{ outer: side, holes: [] }], [window]);
  return found.outcome === "ok" ? found.region : [];
}
