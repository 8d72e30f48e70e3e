import { step } from "../../step/step.ts";
import { greatest, lowerTo, raiseTo, type Wall } from "../wall.ts";
import { type ProfileInput, profileOf } from "./profile.ts";
import { placesAlong, type Sunk, type SunkPlace, woodAt } from "./wood-round.ts";

/** The rods' channels in a neck and the least wood wanted round them, mm. */
export type RodWallsInput = {
  readonly profile: ProfileInput;
  readonly rods: readonly Sunk[];
  readonly wall: number;
};

/**
 * The wood that is left round the rods' channels: under and beside one, where it is least in the neck's sections along it, and
 * between two. The neck is the same on both sides, so one of two channels speaks for both. None without a rod.
 */
export const rodWalls = step(
  "neck.rod-walls",
  1,
  ({ profile, rods, wall }: RodWallsInput): readonly Wall[] => {
    const [first, second] = rods;
    if (first === undefined) return [];
    const places = placesAlong(profileOf(profile), first);
    return [roundWall(places, first, wall), ...(second === undefined ? [] : [betweenWall(first, wall)])];
  },
);

function betweenWall({ y, width }: Sunk, wall: number): Wall {
  return {
    ...{ left: 2 * Math.abs(y) - width, between: "the two rods' channels", ids: ["rod.offset", "rod.width"] },
    mend: `${raiseTo("rod.offset", (wall + width) / 2)} or ${lowerTo("rod.width", 2 * Math.abs(y) - wall)}`,
  };
}

function roundWall(places: readonly SunkPlace[], rod: Sunk, wall: number): Wall {
  const woods = places.map((place) => woodAt(place, rod));
  const left = Math.min(...woods);
  const x = Math.round(places[woods.indexOf(left)]!.place.x);
  const between = `a rod's channel and the neck's back or side ${x} mm from the nut`;
  const ids = ["rod.depth", "rod.offset", "rod.width", "neck.thickness.nut", "neck.thickness.heel"];
  return { left, between, ids, mend: left < wall ? mendOf(places, rod, wall) : "leave it" };
}

/** What gives a channel its wall: less depth and a thicker neck, or where it stands too near the side, another place. */
function mendOf(places: readonly SunkPlace[], rod: Sunk, wall: number): string {
  const all = (sunk: Sunk) => places.every((place) => woodAt(place, sunk) >= wall);
  const depth = greatest(0, rod.depth, (value) => all({ ...rod, depth: value }));
  if (depth < 1) {
    const room = Math.min(...places.map(({ place, half }) => place.form.half - half)) - wall;
    const inward = greatest(0, Math.min(room, Math.abs(rod.y)), (y) => all({ ...rod, y }));
    if (rod.y === 0) return lowerTo("rod.width", rod.width + 2 * Math.min(0, room));
    return inward > rod.width / 2 ? lowerTo("rod.offset", inward) : "lower rod.count to 1";
  }
  const missing = places.filter((place) => woodAt(place, rod) < wall);
  const thicker = Math.max(
    ...missing.map((place) => 40 - greatest(0, 40, (less) => woodAt(place, rod, 40 - less) >= wall)),
  );
  const by = Math.ceil(thicker * 10) / 10;
  return `${lowerTo("rod.depth", depth)}, or raise neck.thickness.nut and neck.thickness.heel by ${by} mm each`;
}
