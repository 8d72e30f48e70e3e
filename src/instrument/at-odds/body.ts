import { leastRadius } from "../../geometry/path-measures/least-radius.ts";
import type { Body } from "../body/body.ts";
import { lowerTo, raiseTo } from "../wall.ts";
import { type Contradiction, type Look, mm, unless } from "./at-odds.ts";

type Of = (id: string) => number;

/** A body in one piece whose bouts are out of order, that has no outline, that begins on the neck, or that leaves no wood round the core. */
export const bodyAtOdds: Look = (of, { body }) => {
  if (body === null) return [];
  const bouts = [...boutsAtOdds(of), ...thicknessAtOdds(of, body)];
  if (bouts.length > 0) return bouts;
  const made = [...outlineAtOdds(of, body), ...recessAtOdds(of, body)];
  return made.length > 0 ? made : [...wallAtOdds(of, body), ...arrisAtOdds(of, body)];
};

/** Places along the body rise from its head end to its tail, and the waist is narrower than both bouts. */
function boutsAtOdds(of: Of): Contradiction[] {
  const ids = ["body.upper.at", "body.waist.at", "body.lower.at", "body.length"] as const;
  const order = ids.slice(1).flatMap((after, i) => {
    const before = ids[i]!;
    return unless(of(before) < of(after), [before, after], {
      found: `${before} ${mm(of(before))}, ${after} ${mm(of(after))}`,
      allowed: "upper bout, waist, lower bout and tail one behind the other",
      hint: `${lowerTo(before, of(after) - 5)} or less`,
    });
  });
  const waist = of("body.waist.width");
  return [
    ...order,
    ...["body.upper.width", "body.lower.width"].flatMap((bout) =>
      unless(waist < of(bout), ["body.waist.width", bout], {
        found: `a waist ${mm(waist)} wide beside a bout of ${mm(of(bout))}`,
        allowed: "a waist narrower than both bouts",
        hint: `${lowerTo("body.waist.width", of(bout) - 1)}, or raise ${bout}`,
      }),
    ),
  ];
}

/** The core is let in from the front, and wood is left under it; front and back edges don't meet. */
function thicknessAtOdds(of: Of, { floor }: Body): Contradiction[] {
  const [drop, depth, thickness] = [of("body.drop"), of("core.depth"), of("body.thickness")];
  const least = of("body.arris") * 2;
  return [
    ...unless(drop < depth, ["body.drop", "core.depth"], {
      found: `a body whose front lies ${mm(drop)} under the front of a core ${mm(depth)} deep`,
      allowed: "a body that the core is let into",
      hint: lowerTo("body.drop", depth / 3),
    }),
    ...(floor === null || drop >= depth
      ? []
      : unless(floor >= of("body.floor.least"), ["body.thickness", "body.drop", "core.depth"], {
          found:
            floor > 0
              ? `a floor of ${mm(floor)} under the core`
              : `a recess ${mm(depth - drop)} deep in a body ${mm(thickness)} thick`,
          allowed: `a floor of ${mm(of("body.floor.least"))} or more`,
          hint: raiseTo("body.thickness", depth - drop + of("body.floor.least")),
        })),
    ...unless(least < thickness, ["body.arris", "body.thickness"], {
      found: `arrises of ${mm(of("body.arris"))} at front and back of a body ${mm(thickness)} thick`,
      allowed: "edges that leave wood between them",
      hint: lowerTo("body.arris", thickness / 3),
    }),
  ];
}

function outlineAtOdds(of: Of, { outline, full }: Body): Contradiction[] {
  const start = unless(of("body.start") >= full, ["body.start", "neck.heel.end", "neck.transition.end"], {
    found: `a body that begins ${mm(of("body.start"))} along the core, where the neck is no core yet`,
    allowed: `${mm(full)} or more, where sides and back have reached the core`,
    hint: raiseTo("body.start", full),
  });
  if (outline.kind === "ok") return start;
  if (outline.kind === "unfair")
    return [
      ...unless(false, ["body.upper.at", "body.waist.at", "body.lower.at"], {
        found: "bouts that no fair curve passes",
        allowed: "bouts further apart",
        hint: "move body.upper.at, body.waist.at and body.lower.at apart",
      }),
    ];
  const id = outline.corner === "head" ? "body.head.corner" : "body.corner";
  return unless(false, [id], {
    found: `corners of ${mm(of(id))} ${outline.corner === "head" ? "at the body's head end" : "between bouts and waist"}`,
    allowed: "corners that the edges on both sides have room for",
    hint: lowerTo(id, of(id) / 2),
  });
}

function recessAtOdds(of: Of, { recess, full }: Body): Contradiction[] {
  if (recess.kind !== "too-short") return [];
  return unless(false, ["body.start", "core.end", "neck.corner"], {
    found: `a body that begins ${mm(of("body.start"))} along the core, where that is as good as ended`,
    allowed: "a body that the core reaches into",
    // Upward, so that it doesn't begin on the heel instead.
    hint: `lower body.start to ${Math.ceil(full * 100) / 100} mm`,
  });
}

/** An edge eased further than its outline's bends are wide would have nothing left to run round. A sharp corner is mitred. */
function arrisAtOdds(of: Of, { outline, recess, profile }: Body): Contradiction[] {
  if (outline.kind !== "ok" || recess.kind !== "ok") return [];
  const { front, back } = profile;
  const bend = leastRadius(outline.path, "left");
  const arris = front === "none" && back === "none" ? 0 : of("body.arris");
  const holds = bend.kind === "straight" || bend.radius === 0 || arris < bend.radius;
  const radius = bend.kind === "straight" ? 0 : bend.radius;
  return unless(holds, ["body.arris", "body.head.corner", "body.corner"], {
    found: `arrises of ${mm(arris)} round a bend of ${mm(radius)}`,
    allowed: "arrises smaller than the tightest bend of the body's outline",
    hint: lowerTo("body.arris", radius * 0.9),
  });
}

/** What to make larger, by where the least wood is. */
function wallAtOdds(of: Of, { outline, recess, wall }: Body): Contradiction[] {
  if (outline.kind !== "ok" || recess.kind !== "ok") return [];
  const least = of("body.wall.least");
  if (wall.left >= least) return [];
  const short = least - wall.left;
  const behind = least + recess.end - of("body.start");
  const ids = [nearest(of, wall.at - of("body.start")), "core.width", "body.recess.clearance"];
  const found = wall.left > 0 ? `${mm(wall.left)} of wood` : "no wood";
  if (of("body.length") < behind)
    return unless(false, ["body.length", "body.start", "core.end"], {
      found: `a body that ends ${mm(of("body.start") + of("body.length"))} along the core, the core's room at ${mm(recess.end)}`,
      allowed: `${mm(least)} of wood or more behind the core's tail`,
      hint: raiseTo("body.length", behind),
    });
  return unless(false, ids, {
    found: `${found} between the core and the body's edge ${mm(wall.at - of("body.start"))} from its head end`,
    allowed: `${mm(least)} or more all round the core`,
    // Tail and head corners give less wood than the outline grows, as their rims run aslant.
    hint: raiseTo(ids[0]!, of(ids[0]!) + (ids[0] === "body.waist.width" ? 2 : 3) * short),
  });
}

/** The dimension that widens the body most at a place along it. */
function nearest(of: Of, along: number): string {
  const places = [
    ["body.head.width", 0],
    ["body.upper.width", of("body.upper.at")],
    ["body.waist.width", of("body.waist.at")],
    ["body.lower.width", of("body.lower.at")],
    ["body.length", of("body.length")],
  ] as const;
  return places.reduce((a, b) => (Math.abs(b[1] - along) < Math.abs(a[1] - along) ? b : a))[0];
}
