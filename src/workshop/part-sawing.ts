import type { Extents } from "../geometry/measure.ts";
import { madeBody } from "../instrument/body/body.ts";
import type { Instrument } from "../instrument/instrument.ts";
import { hasSawDrawing, type SawDrawing, sawDrawings } from "../order/saw-names.ts";
import type { Bandsaw } from "../order/shop.ts";
import { dimensionOf, type Spec } from "../order/spec.ts";
import { lazy } from "../step/lazy.ts";
import type { Store } from "../step/store.ts";
import { type PartCuts, partCuts } from "./bandsaw/part-cuts.ts";
import type { SawnShape } from "./bandsaw/part-lines.ts";
import { type PartTableCut, partSequence, upForJoint } from "./bandsaw/part-sequence.ts";
import type { Blanks, PartStock } from "./blanks.ts";

/**
 * How one part is sawn out of its blank, in its own plane, right-handed: what of it is cut, where the blank lies round it, how thick that is
 * when it is planed, the stock that it comes out of, saw and lines, and the cuts in their order; mm.
 */
export type PartSawing = {
  readonly file: SawDrawing;
  readonly part: string;
  readonly shape: SawnShape;
  readonly blank: Extents;
  readonly planed: number;
  readonly stock: PartStock;
  readonly cuts: PartCuts;
  readonly sequence: readonly PartTableCut[];
};

/** The sawing of a spec's wings or body, and of its fingerboard; each worked out when it is asked for. */
export function partSawing(spec: Spec, made: Instrument, blanks: Blanks, store: Store): PartSawing[] {
  const files = Object.keys(sawDrawings) as SawDrawing[];
  return files
    .filter((file) => hasSawDrawing(spec, file))
    .map((file) => sawingOf(file, spec, made, blanks, store));
}

/** One of some parts' sawings by its drawing. Throws where there is none: ask what the design has. */
export function sawingNamed(all: readonly PartSawing[], file: SawDrawing): PartSawing {
  const found = all.find((one) => one.file === file);
  if (found === undefined) throw new RangeError(`nothing is sawn to ${file}`);
  return found;
}

function sawingOf(file: SawDrawing, spec: Spec, made: Instrument, blanks: Blanks, store: Store): PartSawing {
  const part = sawDrawings[file];
  const saws = spec.shop.machines.filter((machine): machine is Bandsaw => machine.kind === "bandsaw");
  const sequenceOf = (tilt: Bandsaw["tilt"]) => {
    const { shape, planed: thickness, blank } = own;
    if (shape.kind !== "wing") return partSequence({ kind: shape.kind, thickness });
    return partSequence({
      ...{ kind: "wing", side: part === "wing-bass" ? "bass" : "treble", hand: spec.hand, thickness },
      ...{ bevel: shape.bevel, waste: wasteBeyond(shape.tail, blank), tilt },
    });
  };
  const own: PartSawing = lazy<PartSawing>({
    ...{ file: () => file, part: () => part },
    shape: () => shapeOf(part, made, own.planed),
    blank: () => placeOf(part, made, blanks),
    planed: () => (part === "fingerboard" ? made.boardBlank.thickness : sawnOf(part, blanks).planed),
    stock: () =>
      part === "fingerboard"
        ? { part, blank: made.boardBlank, woods: spec.boardWoods, stock: blanks.fingerboard }
        : sawnOf(part, blanks),
    cuts: () =>
      store.answer(partCuts, {
        ...{ shape: own.shape, blank: own.blank },
        height: Math.max(...sequenceOf(anyTilt).map(({ work }) => work)),
        allowance: dimensionOf(spec, "saw.allowance"),
        saws: saws.map(({ id, throat, height, blades }) => ({ id, throat, height, blades })),
      }).value,
    sequence: () => {
      const { saw } = own.cuts;
      return sequenceOf(saws.find(({ id }) => saw.kind === "ok" && id === saw.id)?.tilt ?? anyTilt);
    },
  });
  return own;
}

function shapeOf(part: string, made: Instrument, thickness: number): SawnShape {
  if (part === "fingerboard") {
    if (made.board.kind !== "ok") throw new RangeError(`the fingerboard has no outline: ${made.board.kind}`);
    return { kind: "board", outline: made.board.path };
  }
  if (part === "body") return { kind: "body", outline: madeBody(made.body!).outline.path };
  const { outline, place } = made.wings![part === "wing-bass" ? "bass" : "treble"];
  if (outline.kind !== "ok") throw new RangeError(`${part} has no outline: ${outline.kind}`);
  const { bevel } = place.cut;
  return {
    kind: "wing",
    outline: outline.path,
    tail: outline.joint,
    bevel,
    up: upForJoint(bevel),
    thickness,
  };
}

/** Where a blank lies; a fingerboard's ends and sides have what its size was rounded up by half on either side. */
function placeOf(part: string, { boardBlank, taper }: Instrument, blanks: Blanks): Extents {
  if (part !== "fingerboard") return sawnOf(part, blanks).place;
  const [beyond, half] = [(boardBlank.length - taper.length) / 2, boardBlank.width / 2];
  return { minX: -beyond, maxX: taper.length + beyond, minY: -half, maxY: half };
}

function sawnOf(part: string, { sawn }: Blanks): Blanks["sawn"][number] {
  const found = sawn.find((one) => one.part === part);
  if (found === undefined) throw new RangeError(`${part} has no blank`);
  return found;
}

/** How far a wing's blank reaches beyond its joint line, square to that, at most, mm. */
function wasteBeyond([x, y]: readonly [number, number], { minX, maxX, minY }: Extents): number {
  const length = Math.hypot(x, y);
  return Math.max(...[minX, maxX].map((at) => (at * y - minY * x) / length));
}

/** A table that tilts as far as is asked: how high the work is doesn't rest on that. */
const anyTilt: Bandsaw["tilt"] = [-90, 90];
