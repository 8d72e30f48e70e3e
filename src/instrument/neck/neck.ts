import { extentsOf } from "../../geometry/measure.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { Blank } from "../blank.ts";
import type { CoreFrame } from "../core/frame.ts";
import { type BoardSurface, boardTop } from "../fingerboard/surface.ts";
import type { Taper } from "../fingerboard/taper.ts";
import type { Head } from "../head/head.ts";
import type { Recesses } from "../recess/recesses.ts";
import { sunkenOf } from "../sunken.ts";
import { neckBlank } from "./blank.ts";
import type { Joinery } from "./joinery.ts";
import { type NeckPlan, neckPlan, type PlanInput } from "./plan.ts";
import type { ProfileInput } from "./profile.ts";
import { neckStations, profileInput } from "./profile-input.ts";
import type { RodsAndPins } from "./rods-and-pins.ts";
import { type NeckSection, neckSections } from "./sections.ts";
import { type NeckSide, neckSide, type WoodAt } from "./side.ts";
import { type NeckSolidInput, neckSolid } from "./solid.ts";
import { solidInput } from "./solid-input.ts";

/** What is made of the neck: its views, its sections, its solid and the blank that it is sawn from. */
export type Neck = {
  readonly neckPlan: NeckPlan;
  readonly neckSide: NeckSide;
  readonly neckBlank: Blank;
  readonly neckProfile: ProfileInput;
  readonly neckSections: readonly NeckSection[];
  readonly neckSolidInput: NeckSolidInput;
  readonly neckSolid: Solid;
  /** The wood of the neck at its two named stations. */
  readonly neckWood: { readonly nut: WoodAt; readonly heel: WoodAt };
};

/** What the neck rests on. */
export type UnderNeck = Pick<Head, "tuners"> &
  Pick<Joinery, "corePockets" | "wingPinHoles"> &
  Pick<RodsAndPins, "neckRods" | "neckPins"> &
  Pick<Recesses, "sunken"> & {
    readonly core: CoreFrame;
    readonly taper: Taper;
    readonly surface: BoardSurface;
  };

/** The thickness at one of the neck's named stations, with the board, and what of it is wood of the neck; mm. */
function woodAt(spec: Spec, surface: BoardSurface, where: "nut" | "heel"): WoodAt {
  const x = dimensionOf(spec, `neck.station.${where}`);
  return { x, wood: dimensionOf(spec, `neck.thickness.${where}`) - boardTop(surface, x, 0) };
}

function planInput(spec: Spec, { taper, tuners }: Pick<UnderNeck, "taper" | "tuners">): PlanInput {
  const of = (id: string) => dimensionOf(spec, id);
  return {
    ...{ taper, nutThickness: of("nut.thickness") },
    head: {
      ...{ length: tuners.length, angle: of("head.angle"), shoulder: of("head.shoulder") },
      half: tuners.half,
    },
    transition: { start: of("neck.transition.start"), end: of("neck.transition.end") },
    core: {
      ...{ width: of("core.width"), at: of("string.length"), taper: of("core.taper"), end: of("core.end") },
    },
    corners: { head: of("head.corner"), tail: of("neck.corner") },
  };
}

/** How each answer about the neck is worked out; `own` is asked only then. */
export function neckGetters(spec: Spec, store: Store, own: () => Neck & UnderNeck): Getters<Neck> {
  const of = (id: string) => dimensionOf(spec, id);
  return {
    neckPlan: () => store.answer(neckPlan, planInput(spec, own())).value,
    neckSide: () =>
      store.answer(neckSide, {
        nutThickness: of("nut.thickness"),
        head: {
          ...{ length: own().tuners.length, angle: of("head.angle") },
          ...{ thickness: of("head.thickness"), volute: of("head.volute") },
        },
        ...own().neckWood,
        heelEnd: of("neck.heel.end"),
        core: { ...own().core, end: of("core.end"), depth: of("core.depth") },
      }).value,
    neckProfile: () => profileInput(spec, own().neckPlan, own().neckSide),
    neckSections: () =>
      store.answer(neckSections, { profile: own().neckProfile, stations: neckStations(spec) }).value,
    neckSolidInput: () =>
      solidInput(spec, {
        ...{ profile: own().neckProfile, core: own().core, tuners: own().tuners.tuners },
        ...{ rods: own().neckRods, pins: own().neckPins },
        ...{ wingPins: own().wingPinHoles, pockets: own().corePockets },
        sunken: sunkenOf(own().sunken.neck),
      }),
    neckSolid: () => store.answer(neckSolid, own().neckSolidInput).value,
    neckWood: () => ({ nut: woodAt(spec, own().surface, "nut"), heel: woodAt(spec, own().surface, "heel") }),
    neckBlank: () => {
      const { plan, side } = own().neckProfile;
      const [inPlan, inSide] = [extentsOf([plan])!, extentsOf([side])!];
      return store.answer(neckBlank, {
        ...{
          length: inPlan.maxX - inPlan.minX,
          width: inPlan.maxY - inPlan.minY,
          thickness: inSide.maxY - inSide.minY,
        },
        allowance: {
          end: of("neck.allowance.end"),
          side: of("neck.allowance.side"),
          face: of("neck.allowance.face"),
        },
      }).value;
    },
  };
}
