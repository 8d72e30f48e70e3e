import { mirrored } from "../../../geometry/mirror.ts";
import type { Path } from "../../../geometry/path.ts";
import { type CoreFrame, frontAt } from "../../../instrument/core/frame.ts";
import type { HeadFaceInput } from "../../flat/head-face.ts";

/** A section of the neck at a station, seen from the tail: its outline in its own plane, 0 at the board's gluing surface. */
export type SectionAt = { readonly name: string; readonly x: number; readonly path: Path };

/** A rod's channel from the front: its outline in plan, its depth from z = 0. */
export type RodAt = { readonly path: Path; readonly depth: number };

/** An index pin's hole, from the front; `fit` and `place` are tolerances, the place's null where it follows from others. */
export type PinAt = {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly diameter: number;
  readonly depth: number | "through";
  readonly fit: number;
  readonly place: number | null;
};

/** How far what is drawn may differ from the wood, mm and degrees. */
export type NeckTolerances = {
  readonly usual: number;
  readonly nutThickness: number;
  readonly boardLength: number;
  readonly stringLength: number;
  readonly transitionStart: number;
  readonly transitionEnd: number;
  readonly coreStart: number;
  readonly coreEnd: number;
  readonly coreDrop: number;
  readonly coreSlope: number;
  readonly coreWidth: number;
  readonly coreDepth: number;
  readonly corner: number;
  readonly heelEnd: number;
  readonly stationNut: number;
  readonly stationHeel: number;
  readonly headAngle: number;
  readonly headThickness: number;
  readonly headMargin: number;
  readonly headRow: number;
  readonly headColumn: number;
  readonly headEdge: number;
  readonly headShoulder: number;
  readonly headCorner: number;
  readonly hole: number;
};

/** What the sheet of a neck shows; mm and degrees, right-handed. Places are as in the instrument's axes. */
export type NeckSheetInput = {
  readonly hand: "right" | "left";
  readonly papers: readonly PaperSize[];
  readonly plan: Path;
  readonly side: Path;
  readonly nutThickness: number;
  readonly boardLength: number;
  readonly stringLength: number;
  readonly transition: { readonly start: number; readonly end: number };
  readonly core: CoreFrame;
  readonly heelEnd: number;
  readonly headAngle: number;
  readonly face: Omit<HeadFaceInput, "hand">;
  readonly sections: readonly SectionAt[];
  readonly rods: readonly RodAt[];
  readonly pins: readonly PinAt[];
  readonly tolerances: NeckTolerances;
};

/** A size of paper and the border that can't be printed on, mm. */
export type PaperSize = {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly margin: number;
};

/** The neck as the hand of the order has it: y turned round for a left hand, before anything is written beside it. */
export function forHand(input: NeckSheetInput): NeckSheetInput {
  if (input.hand === "right") return input;
  return {
    ...input,
    plan: mirrored(input.plan, "y"),
    face: { ...input.face, tuners: input.face.tuners.map((tuner) => ({ ...tuner, y: -tuner.y })) },
    sections: input.sections.map((section) => ({ ...section, path: mirrored(section.path, "x") })),
    rods: input.rods.map((rod) => ({ ...rod, path: mirrored(rod.path, "y") })),
    pins: input.pins.map((pin) => ({ ...pin, y: -pin.y })),
  };
}

/** The core's front at x, or the board's gluing surface before it: z in mm. */
export function topAt({ core }: Pick<NeckSheetInput, "core">, x: number): number {
  return x <= core.start ? 0 : frontAt(core, x);
}

/** The letter of a section, by its place in the row: A, B, C … */
export function letterOf(i: number): string {
  return String.fromCharCode("A".charCodeAt(0) + i);
}
