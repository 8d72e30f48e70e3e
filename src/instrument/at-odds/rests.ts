import type { Instrument } from "../instrument.ts";
import { lowerTo, raiseTo } from "../wall.ts";
import { type Contradiction, type Look, mm, unless } from "./at-odds.ts";

type Of = (id: string) => number;

/** A chin rest that nothing bears or that stands in strings or tailpiece, mounts that break out, an endpin that does. */
export const restsAtOdds: Look = (of, made) => {
  const chin = chinAtOdds(of, made);
  return chin.length > 0 ? chin : [...mountsAtOdds(made), ...endpinAtOdds(made)];
};

const place = "rest.chin";

function chinAtOdds(of: Of, { chinRest }: Instrument): Contradiction[] {
  if (chinRest === null) return [];
  const ids = ["rest.chin.out", "rest.chin.along", "rest.chin.width", "rest.chin.length"];
  const { foot, on } = chinRest;
  if (foot.kind !== "ok")
    return unless(false, ["rest.chin.length", "rest.chin.width"], {
      ...{ place, found: `a chin rest whose edge ${foot.edge} can't be made` },
      ...{
        allowed: "an outline of edges that meet",
        hint: `mend edge ${foot.edge} of the design's chin rest`,
      },
    });
  const { left, what } = chinRest.support;
  if (left < 0)
    return unless(false, ids, {
      ...{ place, found: `a chin rest that reaches ${mm(-left)} past the flat of the ${on}, over ${what}` },
      allowed: "wood under all of its footprint",
      hint: `move rest.chin.out or rest.chin.along, or ${lowerTo("rest.chin.width", of("rest.chin.width") + 2 * left)}`,
    });
  const clear = of("rest.chin.clear");
  return (["strings", "tailpiece"] as const).flatMap((beside) => {
    const room = chinRest[beside];
    return unless(room > 0, ids, {
      ...{ place, found: `a chin rest ${mm(-room)} in the ${beside}` },
      allowed: `${mm(clear)} or more between them (rest.chin.clear)`,
      hint: outward(of, clear - room),
    });
  });
}

/** Tells to move the chin rest so far out from the middle, mm. */
export function outward(of: Of, by: number): string {
  const out = of("rest.chin.out");
  return out < 0 ? lowerTo("rest.chin.out", out - by) : raiseTo("rest.chin.out", out + by);
}

function mountsAtOdds({ mountWalls }: Instrument): Contradiction[] {
  const none = mountWalls.filter(({ left }) => left <= 0).sort((a, b) => a.left - b.left);
  // What one place has wrong is told once, by the worst of it.
  const told = none.filter((wall, i) => none.findIndex((other) => other.place === wall.place) === i);
  return told.map((wall) => ({
    ...{ ids: [...wall.ids, wall.least], place: wall.place },
    found: `no wood between ${wall.between}: they overlap by ${mm(-wall.left)}`,
    ...{ allowed: "wood all round a rest's mounts", hint: wall.mend },
  }));
}

function endpinAtOdds({ endpin }: Instrument): Contradiction[] {
  const none = (endpin?.walls ?? []).filter(({ left }) => left <= 0);
  return none.map(({ left, between, ids, mend }) => ({
    ...{ ids, found: `no wood between ${between}: they overlap by ${mm(-left)}` },
    ...{ allowed: "wood all round the endpin's bore", hint: mend },
  }));
}
