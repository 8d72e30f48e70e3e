import type { Cutter, Guide, Shop } from "../../order/shop.ts";
import { guideOffset } from "./guide-offset.ts";
import { firstGuide, passesOf } from "./passes.ts";
import type { CutWanted, GuidedMachine, SetUp } from "./set-up.ts";
import { rimSpeed, speedBound, speedSet } from "./spindle-speed.ts";

/** The part of a shop's file that guided cuts are chosen from. */
export type GuidedShop = Pick<Shop, "machines" | "cutters" | "guides">;

/** The machines of a kind that a template is used on, in the shop's order. */
export function machinesOf({ machines }: GuidedShop, kind: CutWanted["kind"]): GuidedMachine[] {
  return machines.filter((one): one is GuidedMachine => one.kind === kind);
}

/** The guides that ride with a cutter on a machine: those that fit the one or the other. */
export function guidesFor({ guides }: GuidedShop, machine: GuidedMachine, cutter: Cutter): Guide[] {
  return guides.filter(({ fits }) => fits.includes(machine.id) || fits.includes(cutter.id));
}

/** Every machine, cutter and guide that go together and that the order's names allow, each with its first guide where there is one. */
export function candidates(shop: GuidedShop, wanted: CutWanted): SetUp[] {
  const { kind, named } = wanted;
  const asked = (name: string | null, { id }: { readonly id: string }) => name === null || name === id;
  return machinesOf(shop, kind)
    .filter((machine) => asked(named.machine, machine))
    .flatMap((machine) =>
      shop.cutters
        .filter((cutter) => cutter.fits.includes(machine.id) && asked(named.cutter, cutter))
        .flatMap((cutter) => {
          const guides = guidesFor(shop, machine, cutter);
          return guides
            .filter((guide) => asked(named.guide, guide))
            .map((guide) => setUpOf(machine, cutter, guide, guides, wanted));
        }),
    );
}

function setUpOf(
  machine: GuidedMachine,
  cutter: Cutter,
  guide: Guide,
  guides: readonly Guide[],
  { allowance, recess }: CutWanted,
): SetUp {
  const larger = guides.filter(
    ({ kind, diameter }) =>
      kind === guide.kind && Math.abs(diameter - guide.diameter - firstGuide.larger) < pairWithin,
  );
  const first = larger[0] ?? null;
  const bound = speedBound(machine.kind, cutter.diameter, cutter["most-speed"] ?? null);
  const rpm = speedSet(machine.speeds, bound);
  return {
    ...{ machine, cutter, guide, first, offset: guideOffset(cutter.diameter, guide.diameter) },
    passes: recess === undefined ? passesOf(allowance, { final: guide.id, first: first?.id ?? null }) : [],
    speed: { rpm, bound, rim: rimSpeed(cutter.diameter, rpm) },
  };
}

/** How far a pair of guides may be from 2.0 apart in diameter, mm: 0.05 on the edge. */
const pairWithin = 0.1;
