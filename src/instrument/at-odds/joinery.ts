import { type Look, mm } from "./at-odds.ts";

/** What is sunk into the core and comes out of its back, or meets a wing's pin: told once for all that one move mends. */
export const joineryAtOdds: Look = (_, { joineryWalls }) => {
  const met = joineryWalls.filter(({ left }) => left < 0).sort((a, b) => a.left - b.left);
  const first = met.filter(({ ids }, i) => met.findIndex((wall) => wall.ids[0] === ids[0]) === i);
  return first.map(({ left, between, ids, mend }) => ({
    ids,
    found: `no wood between ${between}, which overlap by ${mm(-left)}`,
    ...{ allowed: "wood between the two", hint: mend },
  }));
};
