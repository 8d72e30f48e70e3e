import { type Side, sides } from "../../order/side.ts";
import { lowerTo, thinnest } from "../wall.ts";
import type { Wing } from "../wing/wings.ts";
import { type Contradiction, type Look, mm, unless } from "./at-odds.ts";

/** Wings that have no outline, that stand off the core's straight sides, whose joint reaches out of the core, or whose pins do. */
export const wingsAtOdds: Look = (of, made) =>
  made.wings === null ? [] : sides.flatMap((side) => wingAtOdds(side, made.wings![side], of));

function wingAtOdds(side: Side, wing: Wing, of: (id: string) => number): Contradiction[] {
  if (wing.outline.kind !== "ok") return [unmade(side, wing.outline)];
  const odds = [...offCore(side, wing, of), ...outOfCore(side, wing, of)];
  return odds.length > 0 ? odds : throughPins(wing);
}

type Unmade = Exclude<Wing["outline"], { readonly kind: "ok" }>;

function unmade(side: Side, { kind, edge }: Unmade): Contradiction {
  const said = {
    "no-joint": ["doesn't begin with a joint", "one straight edge from [0, 0], joined, with sharp ends"],
    "no-curve": ["follows what isn't there", "edges of its own"],
    "no-room": ["has no room for its corner", "a smaller corner"],
    unfair: ["passes places that no fair curve does", "places further apart"],
  } as const;
  const [found, allowed] = said[kind];
  return {
    ...{ ids: [`wing.${side}.length`, `wing.${side}.width`], place: `wing-${side}.${edge}` },
    ...{
      found: `the ${side} wing's edge ${edge} ${found}`,
      allowed,
      hint: `mend edge ${edge} of the ${side} wing`,
    },
  };
}

/** The core's sides are straight from the end of the neck's transition to its tail's corners. */
function offCore(side: Side, { place, joint }: Wing, of: (id: string) => number): Contradiction[] {
  const own = (name: string) => `wing.${side}.${name}`;
  const [first, last] = [of("neck.transition.end"), of("core.end") - of("neck.corner")];
  const tail = place.x + joint.length * Math.cos((of("core.slope") * Math.PI) / 180);
  const by = (length: number) => Math.ceil(length * 10) / 10;
  return [
    ...unless(place.x >= first, [own("start"), "neck.transition.end", "core.start"], {
      found: `the ${side} wing's joint beginning ${mm(place.x)} from the nut`,
      allowed: `${mm(first)} or more, where the neck's sides have reached the core`,
      hint: `raise ${own("start")} by ${by(first - place.x)} mm`,
    }),
    ...(tail - place.x > last - first
      ? longerThanCore(side, { place, joint }, of, [first, last])
      : unless(tail <= last, [own("length"), own("start"), "core.end", "neck.corner"], {
          found: `the ${side} wing's joint ending ${mm(tail)} from the nut`,
          allowed: `${mm(last)} or less, where the core's corner begins`,
          hint: `lower ${own("length")} or ${own("start")} by ${by(tail - last)} mm`,
        })),
  ];
}

/** No place along the core has room for such a wing. */
function longerThanCore(
  side: Side,
  { place, joint }: Pick<Wing, "place" | "joint">,
  of: (id: string) => number,
  [first, last]: readonly [number, number],
): Contradiction[] {
  const id = `wing.${side}.length`;
  const along = Math.cos((of("core.slope") * Math.PI) / 180);
  const from = Math.max(first, place.x);
  return unless(false, [id, "core.end", "neck.transition.end", "neck.corner"], {
    found: `the ${side} wing's joint ${mm(joint.length)} long on a core whose sides are straight over ${mm((last - first) / along)}`,
    allowed: "a wing no longer than its core",
    hint: lowerTo(id, (of(id) * (last - from)) / along / joint.length),
  });
}

/** A joint strip that isn't inside the core at both its ends leaves an edge with nothing to be glued to. */
function outOfCore(side: Side, { joint }: Wing, of: (id: string) => number): Contradiction[] {
  const own = (name: string) => `wing.${side}.${name}`;
  return (["head", "tail"] as const).flatMap((end) => {
    const { front, back } = joint.inside[end];
    const ids = [own("rake"), own("drop"), own("thickness"), own("cant"), own("length"), "core.depth"];
    const said = (by: number, face: string, hint: string) => ({
      found: `the ${side} wing's joint strip ${mm(-by)} out of the core's ${face} at its ${end} end`,
      ...{ allowed: "a strip inside the core at both ends", hint },
    });
    const level = (Math.asin(Math.min(1, of(own("drop")) / joint.length)) * 180) / Math.PI;
    // Where the strip hangs out at its tail, thinning may not do: its tail end is lifted instead.
    const thinner = of(own("thickness")) * (1 + joint.inside[end].back / joint.deep);
    const lifted = (Math.asin(Math.min(1, -joint.inside[end].back / joint.length)) * 180) / Math.PI;
    const mended =
      end === "tail" && of(own("rake")) < 0
        ? `raise ${own("rake")} to ${Math.ceil((of(own("rake")) + lifted) * 100) / 100} deg`
        : lowerTo(own("thickness"), thinner);
    const up =
      end === "head"
        ? `raise ${own("drop")} to 0 mm or more`
        : `lower ${own("rake")} to ${Math.floor(level * 100) / 100} deg`;
    return [
      ...unless(front >= 0, ids, said(front, "front", up)),
      ...unless(back >= 0, ids, said(back, "back", mended)),
    ];
  });
}

function throughPins({ pinWalls }: Wing): Contradiction[] {
  const { left, between, ids, mend } = thinnest(pinWalls);
  return unless(left > 0, ids, {
    found: `no wood between ${between}: they overlap by ${mm(-left)}`,
    allowed: "wood all round a pin's hole",
    hint: mend,
  });
}
