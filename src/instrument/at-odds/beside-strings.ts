import { fromFrame } from "../../geometry/solid/frame.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { type Side, sides } from "../../order/side.ts";
import { bowClearance, type ClearanceInput } from "../bow/clearance.ts";
import { roomMend } from "../clear/room-mend.ts";
import { coreAxes } from "../core/from-core.ts";
import type { Instrument } from "../instrument.ts";
import { turnedAbout } from "../turned-about.ts";
import { greatest, raiseTo } from "../wall.ts";
import { type Look, mm, unless } from "./at-odds.ts";

/** Wings or a body whose front a string runs into. */
export const besideStringsAtOdds: Look = (of, { stringRooms, fronts, stringLines }) =>
  stringRooms.flatMap(({ part, left, string }, i) => {
    if (left > 0) return [];
    const wanted = of("strings.clear");
    const { ids, mend } = roomMend(fronts[i]!, stringLines, wanted);
    return unless(false, ids, {
      found: `the ${part}'s front ${mm(-left)} into the space of string ${string}`,
      allowed: `a front that stays ${mm(wanted)} clear of every string (strings.clear)`,
      hint: mend,
    });
  });

/** What a bow strikes where it plays an outer string: it can't get there at all. */
export const bowAtOdds: Look = (of, made) =>
  sides.flatMap((side) => {
    const { surface } = made.bowClearance[side];
    if (surface > 0) return [];
    const { ids, what, mend } = struck(of, made, side);
    return unless(false, ids, {
      found: `the ${what} ${mm(-surface)} in the bow's way where it plays the outer string on the ${side} side`,
      ...{ allowed: "nothing in the bow's way up to its outermost tilt", hint: mend },
    });
  });

type Struck = { readonly ids: readonly string[]; readonly what: string; readonly mend: string };

type Surfaces = ClearanceInput["surfaces"];

/** The least that a mended part is told to clear the bow, mm: more than what is only worth a look (see checks/bow-clear.ts). */
const wanted = 5;

function struck(of: (id: string) => number, made: Instrument, side: Side): Struck {
  const { wings, body, core, bowOuter } = made;
  const near = (surfaces: Surfaces, least: number) =>
    bowClearance.work({ ...bowOuter[side], surfaces }).surface < least;
  const top = wings?.[side].top ?? body?.top[side];
  const moved = (move: (at: Vec3) => Vec3): Surfaces => ({
    flats: [top!.flat.map(move)],
    strips: top!.strips.map((strip) => strip.map((line) => line.map(move))),
  });
  if (
    top === undefined ||
    !near(
      moved((at) => at),
      1e-9,
    )
  )
    return {
      ...{ ids: ["core.slope", "core.drop", "core.width"], what: "core" },
      mend: "raise core.slope or core.drop, or narrow core.width",
    };
  const axes = coreAxes(core);
  if (wings === null) {
    const lowered = (by: number) => moved((at) => fromFrame({ ...axes, origin: at }, 0, 0, -by));
    const by = greatest(0, 200, (down) => near(lowered(down), wanted));
    return {
      ...{ ids: ["body.drop", "body.waist.width", "core.slope"], what: "body" },
      mend: `${raiseTo("body.drop", of("body.drop") + by)} or lower body.waist.width`,
    };
  }
  const own = (name: string) => `wing.${side}.${name}`;
  const { origin, u } = wings[side].joint.face;
  const [from, to] = [
    fromFrame(axes, origin.x, origin.y, origin.z),
    fromFrame({ ...axes, origin: nowhere }, u.x, u.y, u.z),
  ];
  // Its cant drops the wing about the joint line: by the right-hand rule that way on the bass side, against it on the treble one.
  const dropped = (by: number) =>
    moved((at) => turnedAbout({ from, along: to }, side === "bass" ? by : -by, at));
  const most = 60 - of(own("cant"));
  const ids = [own("cant"), own("drop"), own("rake"), own("width")];
  const what = `${side} wing`;
  if (near(dropped(most), wanted)) return { ids, what, mend: `raise ${own("drop")} or lower ${own("rake")}` };
  const by = greatest(0, most, (turn) => near(dropped(turn), wanted));
  return { ids, what, mend: `raise ${own("cant")} to ${Math.ceil((of(own("cant")) + by) * 100) / 100} deg` };
}

const nowhere: Vec3 = { x: 0, y: 0, z: 0 };
