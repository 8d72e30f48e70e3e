import type { OwnPlane } from "../own-plane.ts";
import { greatest, raiseTo } from "../wall.ts";
import type { Front } from "./clear.ts";
import type { StringLine } from "./string-lines.ts";
import { stringRoom } from "./string-room.ts";

/** A wing is canted no further than this, degrees. */
const most = 60;

/** What to move so that a front leaves the strings so much room, mm, and the dimensions that the room follows from. */
export function roomMend(
  { part, plane, path }: Front,
  strings: readonly StringLine[],
  wanted: number,
): { readonly ids: readonly string[]; readonly mend: string } {
  const near = (moved: OwnPlane) => stringRoom.work({ plane: moved, path, top: 0, strings }).left < wanted;
  if (plane.kind === "core") {
    const to = greatest(plane.drop, plane.drop + 200, (drop) => near({ ...plane, drop }));
    return { ids: ["body.drop", "core.slope"], mend: raiseTo("body.drop", to) };
  }
  const own = (name: string) => `${part.replace("-", ".")}.${name}`;
  const { place } = plane;
  const canted = (cant: number): OwnPlane => {
    return { ...plane, place: { ...place, angles: { ...place.angles, cant } } };
  };
  const ids = [own("cant"), own("drop"), own("rake"), own("width")];
  if (near(canted(most))) {
    const dropped = (drop: number): OwnPlane => ({ ...plane, place: { ...place, drop } });
    return {
      ids,
      mend: raiseTo(
        own("drop"),
        greatest(place.drop, place.drop + 100, (drop) => near(dropped(drop))),
      ),
    };
  }
  const to = greatest(place.angles.cant, most, (cant) => near(canted(cant)));
  return { ids, mend: `raise ${own("cant")} to ${Math.ceil(to * 100) / 100} deg` };
}
