import type { Instrument } from "../instrument.ts";
import type { TailpieceOutline } from "../tailpiece/outline.ts";
import type { TailpieceWall } from "../tailpiece/walls.ts";
import { lowerTo, raiseTo } from "../wall.ts";
import { type Contradiction, type Look, mm, unless } from "./at-odds.ts";

/** A tailpiece without an outline, or one that its core, its bridge or its strings have no room for. */
export const tailpieceAtOdds: Look = (of, made) => {
  const { tailpiece } = made;
  // What stands in the bridge may have neither outline nor walls for that alone.
  const inBridge = bridgeAtOdds(of, made);
  if (inBridge.length > 0) return inBridge;
  return [
    ...stringsAtOdds(of, made),
    ...roomAtOdds(of, made),
    ...(tailpiece.kind === "ok" ? wallsAtOdds(of, made) : [unmade(of, tailpiece)]),
  ];
};

function unmade(of: Of, { kind, edge }: Exclude<TailpieceOutline, { readonly kind: "ok" }>): Contradiction {
  const [spread, width] = [of("tailpiece.spread"), of("tailpiece.width")];
  if (kind === "outside")
    return {
      ids: ["tailpiece.width", "tailpiece.spread"],
      found: `strings that leave a tailpiece ${mm(width)} wide ${mm(spread)} apart`,
      allowed: `a tailpiece wider than ${mm(spread)}`,
      hint: raiseTo("tailpiece.width", spread + 2 * (of("tailpiece.wall") + of("tailpiece.hole"))),
    };
  const front = kind === "unfair" && edge === "front";
  return {
    ids: [front ? "tailpiece.spread" : "tailpiece.length", "tailpiece.width", "tailpiece.slant"],
    place: `tailpiece.${edge}`,
    found: `a tailpiece whose edge ${edge} can't be made`,
    allowed: {
      "no-curve": "an edge that follows a curve of the tailpiece: tailpiece.front",
      "no-room": "a corner with a radius that what lies on either side has room for",
      unfair: "places that a fair curve passes without turning back",
    }[kind],
    hint: `raise ${front ? "tailpiece.spread" : "tailpiece.length"}, bring tailpiece.slant nearer to 0, or mend edge ${edge} of the design's tailpiece`,
  };
}

type Of = Parameters<Look>[0];

function bridgeAtOdds(of: Of, { tailpieceRoom: { bridge } }: Instrument): Contradiction[] {
  return unless(bridge > 0, ["afterlength", "tailpiece.slant", "tailpiece.height"], {
    found: `a tailpiece whose front reaches ${mm(-bridge)} into the bridge`,
    allowed: "a front behind the bridge",
    hint: `${raiseTo("afterlength", of("afterlength") - bridge + 0.1)} or bring tailpiece.slant nearer to 0`,
  });
}

/** A string that doesn't go through its hole, or strings that lie in each other where they leave the tailpiece. */
function stringsAtOdds(of: Of, { exits, nut }: Instrument): Contradiction[] {
  const [hole, thick] = [of("tailpiece.hole"), nut.slots.map(({ width }) => width)];
  const thickest = Math.max(...thick);
  const gaps = exits.across.slice(1).map((y, i) => exits.across[i]! - y - (thick[i]! + thick[i + 1]!) / 2);
  const gap = Math.min(...gaps);
  return [
    ...unless(hole > thickest, ["tailpiece.hole"], {
      found: `a string ${mm(thickest)} thick for a hole of ${mm(hole)}`,
      allowed: "a hole that every string goes through",
      hint: raiseTo("tailpiece.hole", thickest + 0.2),
    }),
    ...unless(gap > 0, ["tailpiece.spread"], {
      found: `${thick.length} strings that lie ${mm(-gap)} in each other where they leave the tailpiece`,
      allowed: "a gap between any two strings",
      hint: raiseTo(
        "tailpiece.spread",
        of("tailpiece.spread") - gap * gaps.length + gaps.length * (hole + of("tailpiece.wall")),
      ),
    }),
  ];
}

/** A tailpiece that lies in the core or reaches past its end. */
function roomAtOdds(of: Of, { tailpieceRoom, tailpieceLeast, core }: Instrument): Contradiction[] {
  const { tail, under } = tailpieceRoom;
  const [length, clear] = [of("tailpiece.length"), of("tailpiece.clear")];
  const shorter = length + tail / Math.cos((core.slope * Math.PI) / 180);
  const longer = raiseTo("core.end", of("core.end") - tail);
  return [
    ...unless(
      under >= tailpieceLeast.clear - 1e-6,
      ["tailpiece.height", "tailpiece.thickness", "tailpiece.clear"],
      {
        found:
          under > -1e-6
            ? `a tailpiece whose underside is ${mm(under)} over the core's front`
            : `a tailpiece whose underside is ${mm(-under)} in the core`,
        allowed: `at least ${mm(clear)} (tailpiece.clear)`,
        hint: `${raiseTo("tailpiece.height", of("tailpiece.height") + clear - under)} or thin tailpiece.thickness`,
      },
    ),
    ...unless(tail >= 0, ["tailpiece.length", "afterlength", "core.end"], {
      found: `a tailpiece that reaches ${mm(-tail)} past the core's end`,
      allowed: "an end over the core",
      hint: [
        ...(shorter > 2 * of("tailpiece.hole.at") ? [lowerTo("tailpiece.length", shorter)] : []),
        longer,
      ].join(" or "),
    }),
  ];
}

/** Walls that no order can allow, told once for all that one move mends. */
function wallsAtOdds(of: Of, { tailpieceWalls, tailpieceLeast, layout }: Instrument): Contradiction[] {
  const none = tailpieceWalls
    .filter(({ left }) => left < tailpieceLeast.wall - 1e-6)
    .sort((a, b) => a.left - b.left);
  const first = none.filter(({ ids }, i) => none.findIndex((wall) => wall.ids[0] === ids[0]) === i);
  return first.map((wall) => told(wall, of("tailpiece.wall"), layout.bridge.length));
}

function told(
  { left, between, ids, place, mend }: TailpieceWall,
  least: number,
  count: number,
): Contradiction {
  const wood = left > 0 ? `only ${mm(left)} of wood` : "no wood";
  const many =
    ids[0] === "tailpiece.spread" ? `${count} strings on a tailpiece that has no room for them: ` : "";
  return {
    ids,
    ...(place === null ? {} : { place: `tailpiece.${place}` }),
    found: `${many}${wood} between ${between}${left < 0 ? `, which overlap by ${mm(-left)}` : ""}`,
    allowed: `at least ${mm(least)} (tailpiece.wall)`,
    hint: mend,
  };
}
