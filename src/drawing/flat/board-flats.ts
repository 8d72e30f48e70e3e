import { boardProfile } from "../../instrument/fingerboard/board-profile.ts";
import { boardSection } from "../../instrument/fingerboard/board-section.ts";
import { markedOn } from "../../instrument/fingerboard/dots.ts";
import { type BoardSurface, boardRadius, boardTop } from "../../instrument/fingerboard/surface.ts";
import { boardWidth } from "../../instrument/fingerboard/taper.ts";
import { dimensionOf } from "../../order/spec.ts";
import { boardEndsFlat } from "./board-ends.ts";
import { boardEdgeFlat, boardSideFlat, type ProfilePlace } from "./board-profile.ts";
import type { FlatFile } from "./flat-file.ts";

/** The files of the finished board beside its outline: its side, its two ends, and its bass edge where that has dots. */
export const boardFlats: readonly FlatFile[] = [
  {
    ...{ name: "fingerboard-side", folder: "outlines", part: "fingerboard" },
    seenFrom: { right: "bass side", left: "treble side" },
    what: "template for the fingerboard's thickness and scoop along its middle line",
    of: ({ spec: { hand }, instrument: { surface } }, store) =>
      store.answer(boardSideFlat, {
        hand,
        path: store.answer(boardProfile, { board: surface, line: "middle" }).value,
        places: placesOf(surface, (x) => ({ at: x, thick: boardTop(surface, x, 0) })),
      }),
  },
  {
    ...{ name: "fingerboard-ends", folder: "outlines", part: "fingerboard", seenFrom: "tail" },
    what: "templates for the fingerboard's arch at the nut and at its end",
    of: ({ spec: { hand }, instrument: { surface } }, store) =>
      store.answer(boardEndsFlat, {
        hand,
        sections: [
          { name: "NUT", x: 0 },
          { name: "BOARD END", x: surface.taper.length },
        ].map(({ name, x }) => ({
          ...{ name, radius: boardRadius(surface, x) },
          path: boardSection(surface, x, boardWidth(surface.taper, x) / 2),
        })),
      }),
  },
  {
    ...{ name: "fingerboard-edge", folder: "outlines", part: "fingerboard" },
    seenFrom: { right: "bass side", left: "bass side" },
    applies: ({ dots, frets }) => markedOn(dots.side, frets?.count ?? null).length > 0,
    what: "the fingerboard's bass edge with the bores of its side dots, which are square into it",
    of: ({ spec, instrument: { surface, boardSideDots } }, store) => {
      const { taper } = surface;
      const slant = Math.hypot(1, (taper.end - taper.nut) / 2 / taper.length);
      const { size, depth, list } = boardSideDots!;
      // A corner's tangent from where edge and end would meet: the angle between them is a little under a right one.
      const meet = Math.PI / 2 - Math.atan((taper.end - taper.nut) / 2 / taper.length);
      return store.answer(boardEdgeFlat, {
        ...{ hand: spec.hand, path: store.answer(boardProfile, { board: surface, line: "bass-edge" }).value },
        places: placesOf(surface, (x) => {
          return { at: x * slant, thick: boardTop(surface, x, -boardWidth(taper, x) / 2) };
        }),
        corner: taper.length * slant - dimensionOf(spec, "fingerboard.corner") / Math.tan(meet / 2),
        dots: { size, depth, list: list.map(({ fret, along, z }) => ({ fret, along, z })) },
      });
    },
  },
];

function placesOf(
  { taper: { length } }: BoardSurface,
  of: (x: number) => Omit<ProfilePlace, "name">,
): ProfilePlace[] {
  return [
    { name: "NUT", x: 0 },
    { name: "MIDDLE", x: length / 2 },
    { name: "END", x: length },
  ].map(({ name, x }) => ({ name, ...of(x) }));
}
