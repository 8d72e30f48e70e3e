import { insideFeet } from "../bridge/feet.ts";
import type { Sunk } from "../bridge/sunk.ts";
import { fromCore } from "../core/from-core.ts";
import type { Instrument } from "../instrument.ts";
import { thinnest } from "../wall.ts";
import { type Contradiction, type Look, mm, unless } from "./at-odds.ts";

/** Wood of the core behind the bridge's foot, mm (G: default, confirm). */
const behind = 10;

/** A foot that doesn't stand on the core's front: before its beginning, under the board, over its end, or on nothing at all. */
export const bridgeFootAtOdds: Look = (of, { bridgeStand, bridgeFeet, core }) => {
  const at = (x: number) => fromCore(core, { x, z: 0 }).x;
  const [nut, tail, middle] = [at(bridgeStand.nut), at(bridgeStand.tail), bridgeStand.middle];
  const end = of("core.end");
  const tilt = ["bridge.tilt", "bridge.foot.thickness"];
  return [
    ...unless(bridgeFeet.length > 0, ["bridge.foot.width", "bridge.arch"], {
      found: "a bridge whose outline lies nowhere flat on the core's front",
      allowed: "feet: straight edges at 0 out of the frame",
      hint: "give the design's bridge straight edges for its feet",
    }),
    ...unless(bridgeStand.nut > 0, [...tilt, "core.start", "string.length"], {
      found: `a foot that begins ${mm(-bridgeStand.nut)} before the core's front`,
      allowed: "a foot that stands on the core's front",
      hint: `lower core.start under ${mm(nut)} or lower bridge.tilt`,
    }),
    ...unless(nut > of("fingerboard.length"), [...tilt, "fingerboard.length"], {
      found: `a foot that begins ${mm(nut)} from the nut under a board ${mm(of("fingerboard.length"))} long`,
      allowed: "a foot that stands clear of the board",
      hint: `lower fingerboard.length under ${mm(nut)} or lower bridge.tilt`,
    }),
    ...unless(tail + behind <= end, [...tilt, "core.end"], {
      found: `a foot whose middle stands ${mm(middle)} along the core and ends ${mm(end - tail)} before its end`,
      allowed: `at least ${mm(behind)} of the core behind the foot`,
      hint: `raise core.end to ${mm(Math.ceil((tail + behind) * 100) / 100)} or more, or raise bridge.tilt`,
    }),
  ];
};

/** Screws that leave the foot that they go through or come too near its edge, and a cradle that can't be made. */
export const bridgeFastenedAtOdds: Look = (of, made) => {
  const { bridgeSunk } = made;
  if (bridgeSunk.kind !== "ok")
    return unless(false, ["cradle.length", "bridge.foot.width"], {
      place: `cradle.${bridgeSunk.edge}`,
      found: `a cradle whose edge ${bridgeSunk.edge} can't be made`,
      allowed: bridgeSunk.kind === "no-room" ? "a corner that has room" : "a fair edge of its own",
      hint: `mend edge ${bridgeSunk.edge} of the design's cradle, or cradle.length`,
    });
  return bridgeSunk.sunk
    .filter(({ kind }) => kind === "screw")
    .flatMap((screw) => screwInFoot(screw, made, of("bridge.foot.thickness")));
};

function screwInFoot(screw: Sunk, made: Instrument, thickness: number): Contradiction[] {
  const { id, size, at } = screw;
  const inside = insideFeet(made.bridgeFeet, at.y);
  const along = Math.min(at.x - made.bridgeStand.nut, made.bridgeStand.tail - at.x);
  const nearest = Math.min(along, inside);
  const place = `saddle.${id}`;
  const ids = ["bridge.foot.thickness", "bridge.foot.width"];
  if (nearest <= 0)
    return unless(false, ids, {
      place,
      found: `a screw ${id} whose middle is outside the foot by ${mm(-nearest)}`,
      allowed: `a middle at least ${mm(size)}, its diameter, inside the foot`,
      hint: `move screw ${id}`,
    });
  // On the foot's middle a thicker foot gives it room; anywhere else it has to be moved.
  const thicker =
    along < inside ? ` or raise bridge.foot.thickness to ${mm(thickness + 2 * (size - along))}` : "";
  return unless(nearest >= size - 1e-6, ids, {
    place,
    found: `a screw ${id} of ${mm(size)} whose middle is ${mm(nearest)} from the foot's edge`,
    allowed: `at least ${mm(size)}, its diameter`,
    hint: `move screw ${id}, make it smaller${thicker}`,
  });
}

/** Screws or a cradle that reach out of the core, through its back, or into a rod's channel or an index pin's hole. */
export const bridgeSunkAtOdds: Look = (_, { bridgeSunkWalls }) => {
  if (bridgeSunkWalls.length === 0) return [];
  const { left, between, ids, mend } = thinnest(bridgeSunkWalls);
  return unless(left > 0, ids, {
    found: `no wood between ${between}: they overlap by ${mm(-left)}`,
    allowed: "wood all round what is sunk under the bridge",
    hint: mend,
  });
};
