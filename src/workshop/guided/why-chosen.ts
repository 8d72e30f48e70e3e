import { type GuidedShop, machinesOf } from "./candidates.ts";
import type { Reason } from "./choose.ts";
import { type Fault, plain } from "./fault.ts";
import { type CutWanted, overLength, type SetUp } from "./set-up.ts";

type Judged = { readonly setUp: SetUp; readonly faults: readonly Fault[] };

/** Why each thing of a set-up was taken. */
export function whyThis(setUp: SetUp, { kind, thickness, hollow, named, recess }: CutWanted): Reason[] {
  const { machine, cutter, guide, first, offset, speed } = setUp;
  const asked = (name: string | null) => (name === null ? "" : ", named by the order");
  const bends =
    hollow === null ? "nothing is hollow" : `the tightest hollow has a radius of ${plain(hollow)}`;
  const pair =
    first === null
      ? "no guide 2 mm larger for a first pass"
      : `${first.id} before it leaves ${plain((first.diameter - guide.diameter) / 2)}`;
  const reach =
    recess === undefined
      ? `${plain(thickness)} + ${overLength}`
      : `${plain(recess.depth)} deep under a template of ${plain(recess.template)}`;
  const bound = { mark: "the mark on the tool", diameter: "the charts for its diameter", rim: "70 m/s" };
  return [
    { id: machine.id, why: `the shop's ${kind}${asked(named.machine)}` },
    {
      id: cutter.id,
      why: `cuts ${plain(cutter.length)} of ${reach}, ${plain(cutter.diameter)} across where ${bends}${asked(named.cutter)}`,
    },
    { id: guide.id, why: `offset ${signed(offset)}, ${pair}${asked(named.guide)}` },
    {
      id: `${speed.rpm} rpm`,
      why: `the highest of ${machine.id} under ${plain(speed.bound.rpm)}, ${bound[speed.bound.by]}; rim ${plain(speed.rim)} m/s`,
    },
  ];
}

/** A number with its sign. */
export function signed(value: number): string {
  return `${value > 0 ? "+" : ""}${plain(value)}`;
}

/** Why each other machine of the kind, cutter on it and guide with it was not taken, in the shop's order. */
export function whyNot(
  taken: SetUp,
  judged: readonly Judged[],
  { kind }: CutWanted,
  shop: GuidedShop,
): Reason[] {
  const machines = machinesOf(shop, kind);
  const reason = (id: string, of: (setUp: SetUp) => string, otherwise: string): Reason[] => {
    if (id === of(taken)) return [];
    const mine = judged.filter(({ setUp }) => of(setUp) === id);
    const best = mine[0];
    const why =
      best === undefined
        ? otherwise
        : best.faults.length > 0
          ? best.faults[0]!.why
          : comparedWith(taken, best.setUp);
    return [{ id, why }];
  };
  const rides = shop.guides.filter(({ fits }) =>
    [...machines, ...judged.map(({ setUp }) => setUp.cutter)].some(({ id }) => fits.includes(id)),
  );
  return [
    ...machines.flatMap(({ id }) =>
      reason(id, ({ machine }) => machine.id, "nothing that fits it was left to choose"),
    ),
    ...shop.cutters
      .filter(({ fits }) => machines.some(({ id }) => fits.includes(id)))
      .flatMap(({ id }) =>
        reason(id, ({ cutter }) => cutter.id, "no guide rides with it, or the order names another"),
      ),
    ...rides
      .filter(({ id }) => id !== taken.first?.id)
      .flatMap(({ id }) =>
        reason(id, ({ guide }) => guide.id, "no cutter for it was left, or the order names another"),
      ),
  ];
}

/** Why one set-up with nothing wrong is taken over another: the first thing in which they differ, in the order of preference. */
function comparedWith(taken: SetUp, other: SetUp): string {
  if (other.machine.id !== taken.machine.id) return `would do; ${taken.machine.id} goes before it`;
  if (other.first === null && taken.first !== null)
    return `would do, without a first guide; ${taken.guide.id} has ${taken.first.id}`;
  if (Math.abs(other.offset) !== Math.abs(taken.offset))
    return `would do, with an offset of ${signed(other.offset)}; ${taken.guide.id} on ${taken.cutter.id} has ${signed(taken.offset)}`;
  if (other.cutter.diameter !== taken.cutter.diameter)
    return `would do; ${taken.cutter.id} is larger and steadier`;
  return "would do as well; the first by name was taken";
}
