import type { HardwareItem } from "../order/hardware-item.ts";
import { dimensionOf, type Spec } from "../order/spec.ts";
import type { Model } from "./model.ts";
import { inMm } from "./sequence/work-step.ts";

/** Something that is bought for an instrument: how many, what, its sizes in words, and where it goes. */
export type Bought = {
  readonly count: number;
  readonly what: string;
  readonly size: string;
  readonly where: string;
};

/**
 * What is bought for an instrument beside its wood: strings, what is screwed on, what lies in recesses, rods, fret wire, covers' screws, joint pins. Sizes of items are
 * those of the file of hardware: measure them before a recess is cut.
 */
export function boughtOf(model: Model): Bought[] {
  const { spec } = model;
  return [
    ...spec.strings.map(
      ({ name, diameter }): Bought => ({
        ...{ count: 1, what: `string ${name}`, size: `diameter ${inMm(diameter)}` },
        where: "tuner to tailpiece",
      }),
    ),
    ...screwedOn(spec),
    ...inRecesses(spec),
    ...builtIn(model),
  ];
}

function screwedOn({ hardware, count }: Spec): Bought[] {
  return hardware.map(({ id, item, mass, at }): Bought => {
    const each = at === "tuners" || at === "exits";
    const where = { tuners: "one for each string, in the head", exits: "one for each string, at the tail" };
    return {
      ...{ count: each ? count : 1, what: item === null ? id : `${id}: ${item}` },
      size: `${inMm(mass)} g each`,
      where:
        at === "bridge" ? "under the bridge" : typeof at === "string" ? where[at] : at.map(inMm).join(", "),
    };
  });
}

function inRecesses({ recesses }: Spec): Bought[] {
  return recesses.flatMap(({ id, in: part, holds }): Bought[] =>
    holds.kind === "item"
      ? [{ count: 1, what: `${id}: ${holds.item.item}`, size: sizeOf(holds.item), where: `in the ${part}` }]
      : [],
  );
}

function sizeOf({ body, depth, thread, shaft }: HardwareItem): string {
  const round = body.shape === "round" ? `diameter ${inMm(body.diameter)}` : undefined;
  const box = body.shape === "box" ? `${inMm(body.length)} x ${inMm(body.width)}` : undefined;
  const through = thread ?? shaft;
  const hole = through === null ? "" : `, hole ${inMm(through.hole)}`;
  return `${round ?? box} x ${inMm(depth)} deep${hole}`;
}

function builtIn({ spec, instrument }: Model): Bought[] {
  const of = (id: string) => dimensionOf(spec, id);
  const rods = of("rod.count");
  const screws = instrument.covers.reduce((sum, { recess }) => sum + recess.cover!.screws.length, 0);
  const pins = (["bass", "treble"] as const).flatMap((side) =>
    spec.wings === null ? [] : [{ side, count: spec.wings[side].pins.length, size: of(`wing.${side}.pin`) }],
  );
  const rod = `${inMm(of("rod.width"))} x ${inMm(of("rod.depth"))} x ${inMm(of("rod.length"))}`;
  const all: Bought[] = [
    { count: rods, what: `rod, ${spec.partWoods.rod}`, size: rod, where: "in the neck, under the board" },
    ...pins.map(({ side, count, size }) => {
      return { count, what: "joint pin", size: `diameter ${inMm(size)}`, where: `${side} wing to core` };
    }),
    {
      ...{ count: screws, what: "screw", size: screws > 0 ? `through ${inMm(of("cover.screw"))}` : "" },
      where: "covers to their ledges",
    },
    {
      ...{ count: spec.rests.endpin ? 1 : 0, what: "endpin with its holder", size: "by its recess" },
      where: "in the tail",
    },
    ...(spec.frets === null
      ? []
      : [
          {
            ...{ count: spec.frets.count, what: "fret, wire to its board's width" },
            size: `crown ${inMm(of("fret.crown.width"))} x ${inMm(of("fret.crown.height"))}, tang ${inMm(of("fret.tang.width"))} x ${inMm(of("fret.tang.depth"))}`,
            where: "in the fingerboard",
          },
        ]),
  ];
  return all.filter(({ count }) => count > 0);
}
