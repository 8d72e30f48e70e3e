import { facet } from "../../geometry/facet.ts";
import type { Path } from "../../geometry/path.ts";
import { clearOfPost } from "../../geometry/solid/clear-of-post.ts";
import { step } from "../../step/step.ts";
import { intoPlane, type OwnPlane } from "../own-plane.ts";
import type { StringLine } from "./string-lines.ts";

/** Something beside the strings: its outline in its own plane, seen from the front, and how high it stands out of that; mm. */
export type StringRoomInput = {
  readonly plane: OwnPlane;
  readonly path: Path;
  readonly top: number;
  readonly strings: readonly StringLine[];
};

/** The string that comes nearest, and the room left between the two, mm: negative where it goes into the other. */
export type StringRoom = { readonly left: number; readonly string: string };

/** How far the facets of an outline may stray, mm. */
const chord = 0.05;

/** The least room between what stands up to a height over an outline and the strings, between nut and tailpiece. */
export const stringRoom = step(
  "strings.room",
  1,
  ({ plane, path, top, strings }: StringRoomInput): StringRoom => {
    const into = intoPlane(plane);
    const post = { corners: facet(path, chord).points.map(({ x, y }) => ({ x, y })), top };
    const rooms = strings.map(({ name, half, places }): StringRoom => {
      const own = places.map(into);
      const pieces = own.slice(1).map((to, i) => ({ from: own[i]!, to }));
      return { left: clearOfPost(post, pieces) - half, string: name };
    });
    return rooms.reduce((least, room) => (room.left < least.left ? room : least));
  },
);
