import type { FretEnds } from "../instrument/fingerboard/fret-ends.ts";
import type { FretSlots } from "../instrument/fingerboard/fret-slots.ts";
import type { Spec } from "../order/spec.ts";
import { type Dimension, length } from "./dimension.ts";

const part = "fingerboard";

/** How far a fret may stand from its place, mm (S, trade notes). */
const placed = 0.05;

/** The frets' numbers; none for a fretless order. */
export function fretDimensions({ frets, strings }: Spec): Dimension[] {
  if (frets === null) return [];
  const slot = (id: string, label: string, of: (slots: FretSlots) => number) =>
    length(part, id, label, ({ instrument }) => of(instrument.fretSlots!));
  const end = (id: string, label: string, of: (ends: FretEnds) => number) =>
    length(part, id, label, ({ instrument }) => of(instrument.fretEnds!));
  const gaps = strings.flatMap(({ name }, i): Dimension[] => [
    length("strings", `string.${name}.fret.first`, `${name}: open, its underside over fret 1`, (model) => {
      return model.instrument.fretGaps![i]!.first;
    }),
    ...(frets.count < 2 ? [] : [stopped(name, i)]),
  ]);
  return [
    ...Array.from({ length: frets.count }, (_, i) => ({
      ...slot(`fret.${i + 1}`, `Fret ${i + 1} from the nut`, ({ slots }) => slots[i]!.x),
      tolerance: placed,
    })),
    slot("fret.slot.width", "Width of the frets' slots", ({ width }) => width),
    slot("fret.slot.depth", "Depth of the frets' slots under the curved surface", ({ depth }) => depth),
    slot("fret.slot.left", "Least wood left under a fret's slot", ({ left }) => left),
    end("fret.length.first", "Length of the first fret", ({ lengths }) => lengths[0]!),
    end("fret.length.last", "Length of the last fret", ({ lengths }) => lengths.at(-1)!),
    end(
      "fret.dressing.treble",
      "Run of the frets' bevel with its dressing, treble side",
      ({ treble }) => treble,
    ),
    end("fret.dressing.bass", "Run of the frets' bevel with its dressing, bass side", ({ bass }) => bass),
    ...gaps,
  ];
}

function stopped(name: string, i: number): Dimension {
  const label = `${name}: stopped at any fret, its least gap over a higher one`;
  return length("strings", `string.${name}.fret.least`, label, (model) => {
    return model.instrument.fretGaps![i]!.stopped!;
  });
}
