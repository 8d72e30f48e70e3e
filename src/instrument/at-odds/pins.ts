import { type Look, mm, unless } from "./at-odds.ts";

/** How much two pins of a pair must differ in diameter, mm (G: a default to confirm): less, and one goes into the other's hole. */
const unequal = 0.5;

/** Index pins of like size, by which a template goes on turned, or where no board covers their holes. */
export const pinsAtOdds: Look = (of, { neckPins }) => {
  const pairs = [
    ["pin.head", "pin.tail"],
    ["pin.upper", "pin.lower"],
  ] as const;
  const like = pairs.flatMap(([a, b]) => {
    const [high, low] = of(a) >= of(b) ? [a, b] : [b, a];
    return unless(of(high) - of(low) >= unequal - 1e-9, [a, b], {
      found: `pins of ${mm(of(a))} and ${mm(of(b))}, by which a template can go on turned`,
      allowed: `diameters that differ by ${mm(unequal)} or more`,
      hint: `raise ${high} to ${mm(of(low) + unequal)} or lower ${low} to ${mm(of(high) - unequal)}`,
    });
  });
  const board = of("fingerboard.length");
  const covered = neckPins
    .filter(({ depth }) => depth !== "through")
    .flatMap(({ id, x, diameter }) =>
      unless(x > diameter / 2 && x < board - diameter / 2, [`pin.${id}.at`, `pin.${id}`], {
        found: `a pin of ${mm(diameter)} standing ${mm(x)} from the nut under a board ${mm(board)} long`,
        allowed: `a place from ${mm(diameter / 2)} to ${mm(board - diameter / 2)}, which the board covers`,
        hint: x > board / 2 ? `lower pin.${id}.at` : `raise pin.${id}.at`,
      }),
    );
  return [...like, ...covered];
};

/** Index pins that stand in a channel or a hole, or reach out of the wood; what one move mends is told once. */
export const pinWallsAtOdds: Look = (_, { neckPinWalls }) => {
  const none = neckPinWalls.filter(({ left }) => left <= 0).sort((a, b) => a.left - b.left);
  const told = none.filter(({ mend }, i) => none.findIndex((wall) => wall.mend === mend) === i);
  return told.map(({ left, between, ids, mend }) => ({
    ...{ ids, found: `no wood between ${between}: they overlap by ${mm(-left)}` },
    ...{ allowed: "wood round every index pin", hint: mend },
  }));
};
