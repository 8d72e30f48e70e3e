import type { WireBore } from "../recess/bores.ts";
import type { Recess } from "../recess/recess.ts";
import { madeRecesses } from "../recess/recesses.ts";
import { raiseTo } from "../wall.ts";
import { type Contradiction, type Look, mm, unless } from "./at-odds.ts";

/** Recesses that can't be made, that reach out of the wood or into something else, ways out that lead into a joint, and bores that miss their recess. */
export const recessesAtOdds: Look = (of, made) => {
  if (made.recesses.length === 0) return [];
  const unmade = made.recesses.filter((recess) => recess.kind !== "ok");
  if (unmade.length > 0) return unmade.map((recess) => told(recess, of));
  const flat = tooFewLedges(of);
  if (flat.length > 0) return flat;
  const lost = made.wireBores.flatMap((bore) => (bore.kind === "ok" ? [] : [missed(bore, made.recessIds)]));
  const astray = madeRecesses(made).flatMap(({ id }): Contradiction[] => {
    const hole = made.threadHoles[id];
    if (hole === undefined || hole.outAt === "surface") return [];
    const where = hole.outAt === "joint" ? "the joint" : "the core";
    return [
      {
        ...{
          ids: made.recessIds,
          place: `recess.${id}`,
          found: `recess ${id}'s way out leading into ${where}`,
        },
        ...{ allowed: "a way out at a surface", hint: `turn out of recess ${id} away from ${where}` },
      },
    ];
  });
  if (lost.length + astray.length > 0) return [...lost, ...astray];
  const least = made.recessWallLeast;
  return made.recessWalls.flatMap(({ left, between, ids, mend, of: place }) =>
    unless(left >= least, [...ids, ...made.recessIds], {
      place,
      found:
        left > 0
          ? `${mm(left)} of wood between ${between}`
          : `no wood between ${between}: they overlap by ${mm(-left)}`,
      allowed: `at least ${mm(least)}`,
      hint: mend,
    }),
  );
};

function told(recess: Exclude<Recess, { readonly kind: "ok" }>, of: (id: string) => number): Contradiction {
  const { id } = recess;
  const place = `recess.${id}`;
  if ("edge" in recess) {
    const said = {
      "no-curve": ["follows what isn't there", "edges of its own"],
      "no-room": ["has no room for its corner", "a smaller corner"],
      unfair: ["passes places that no fair curve does", "places further apart"],
    } as const;
    const [found, allowed] = said[recess.kind];
    return {
      ...{ ids: [], place: `${place}.${recess.edge}`, found: `recess ${id}'s edge ${recess.edge} ${found}` },
      ...{ allowed, hint: `mend edge ${recess.edge} of recess ${id}` },
    };
  }
  const { kind, least } = recess;
  const lower = `lower recess.corner to less than ${mm(least)}`;
  const said = {
    "no-corners": [
      `recess ${id} too small for two corners of ${mm(of("recess.corner"))}`,
      "room for its cutter",
      lower,
    ],
    tight: [
      `an inside corner of ${mm(least)} in recess ${id}`,
      `${mm(of("recess.corner"))} or more, as its cutter is`,
      `${lower}, or round the corner`,
    ],
    "no-cover": [
      `recess ${id} whose ledge or cover can't be made`,
      "an outline that a ledge runs round",
      "lower cover.ledge",
    ],
    "no-lip": [
      `a lip of ${mm(of("cover.lip"))} under the cover of recess ${id}, whose corners reach out by ${mm(least)}`,
      "a lip wider than that",
      raiseTo("cover.lip", least),
    ],
  } as const;
  const [found, allowed, hint] = said[kind];
  const ids =
    kind === "no-lip"
      ? ["cover.lip", "recess.corner"]
      : kind === "no-cover"
        ? ["cover.ledge"]
        : ["recess.corner"];
  return { ids, place, found, allowed, hint };
}

/** A ledge that its screws' pilots break out of, a cover that its own clearance eats up. */
function tooFewLedges(of: (id: string) => number): Contradiction[] {
  const [ledge, pilot, screw] = [of("cover.ledge"), of("cover.pilot"), of("cover.screw")];
  const wanted = Math.max(pilot, screw) + 1;
  return [
    ...unless(ledge >= wanted, ["cover.ledge", "cover.screw", "cover.pilot"], {
      found: `a ledge of ${mm(ledge)} for a screw's hole of ${mm(Math.max(pilot, screw))}`,
      allowed: "half a millimetre of wood either side of a screw",
      hint: raiseTo("cover.ledge", wanted),
    }),
    ...unless(of("cover.clearance") < of("cover.lip"), ["cover.clearance", "cover.lip"], {
      found: `${mm(of("cover.clearance"))} of room round a cover on a lip of ${mm(of("cover.lip"))}`,
      allowed: "a cover that rests on its lip",
      hint: "lower cover.clearance or raise cover.lip",
    }),
  ];
}

function missed(
  { id, recess, height, room }: Exclude<WireBore, { readonly kind: "ok" }>,
  ids: readonly string[],
): Contradiction {
  const place = `bore.${id}`;
  const [low, high] = room.map((value) => mm(value));
  if (height === null)
    return {
      ...{ ids, place, found: `bore ${id} beside recess ${recess}, square from under the bridge` },
      allowed: "a recess from the back that lies under the bridge's middle",
      hint: `move recess ${recess} under the bridge`,
    };
  return {
    ...{ ids, place, found: `bore ${id} coming ${mm(height)} over the floor of recess ${recess}` },
    allowed:
      room[0] <= room[1]
        ? `${low} to ${high} over it, within its wall`
        : "a recess deeper than the bore is wide",
    hint: `${height < room[0] ? "raise" : "lower"} the height of bore ${id}, or make it thinner`,
  };
}
