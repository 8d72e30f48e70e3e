import type { Path } from "../../geometry/path.ts";
import { nearestPlace } from "../../geometry/path-measures/nearest-place.ts";
import { whereabouts } from "../../geometry/path-measures/winding.ts";
import type { Point } from "../../geometry/point.ts";
import { step } from "../../step/step.ts";
import { lowerTo, raiseTo, type Wall } from "../wall.ts";

/** A tailpiece's outline and holes, what they follow from, and the least wood wanted, mm. */
export type TailpieceWallsInput = {
  readonly path: Path;
  /** x of the plate's end. */
  readonly end: number;
  readonly strings: readonly { readonly name: string; readonly at: Point }[];
  /** The posts' holes, and half the width of the core's front where each stands over it. */
  readonly posts: readonly {
    readonly id: string;
    readonly at: Point;
    readonly size: number;
    readonly core: number;
  }[];
  readonly spread: number;
  readonly width: number;
  readonly length: number;
  readonly hole: number;
  /** The thickest string, which no hole may be too small for. */
  readonly thickest: number;
  readonly holeAt: number;
  readonly wall: number;
};

/** A wall of the plate, or of the core under a post; `place` is the hole of the design's face that it is about, if any. */
export type TailpieceWall = Wall & { readonly place: string | null };

/**
 * The wood between two neighbouring strings' holes, from every hole to the plate's edge, from a post's hole to every other one,
 * and from a post to the core's side under it.
 */
export const tailpieceWalls = step(
  "tailpiece.walls",
  1,
  (given: TailpieceWallsInput): readonly TailpieceWall[] => {
    const { strings, posts } = given;
    const walls = [
      ...strings.slice(1).map((string, i) => betweenStrings(given, strings[i]!, string)),
      ...strings.map((string) => toEdge(given, string)),
      ...posts.flatMap((post, i) => [
        ...strings.map((string) => toPost(given, string, post)),
        ...posts.slice(0, i).map((other) => betweenPosts(other, post)),
        ...postWalls(given, post),
      ]),
    ];
    // Nothing is to be moved for a wall that is thick enough.
    return walls.map((wall) => (wall.left < given.wall - 1e-6 ? wall : { ...wall, mend: "leave it" }));
  },
);

type StringHole = TailpieceWallsInput["strings"][number];
type Post = TailpieceWallsInput["posts"][number];

function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Strings draw on together behind their exits, so the holes gain at least as much as the exits by a wider spread. */
function betweenStrings(given: TailpieceWallsInput, a: StringHole, b: StringHole): TailpieceWall {
  const { spread, hole, thickest, wall, strings } = given;
  const left = apart(a.at, b.at) - hole;
  const wider = raiseTo("tailpiece.spread", spread + (wall - left) * (strings.length - 1));
  const smaller = hole + left - wall;
  return {
    ...{ left, between: `the holes of ${a.name} and ${b.name}`, place: null },
    ids: ["tailpiece.spread", "tailpiece.hole", "tailpiece.wall"],
    mend:
      smaller > thickest + 0.1
        ? `${wider}, ${lowerTo("tailpiece.hole", smaller)}, or use fewer strings`
        : `${wider} or use fewer strings`,
  };
}

/** A place's way to the plate's edge: how far, negative from outside, and where to. */
function edgeFrom(path: Path, at: Point): { readonly away: number; readonly to: Point } {
  const nearest = nearestPlace(path, at);
  if (nearest.kind !== "ok") throw new RangeError("a plate without an edge");
  const inside = whereabouts(path, at) === "inside";
  return { away: inside ? nearest.distance : -nearest.distance, to: nearest.point };
}

function toEdge(
  { path, width, length, hole, holeAt, wall }: TailpieceWallsInput,
  { name, at }: StringHole,
): TailpieceWall {
  const { away, to } = edgeFrom(path, at);
  const left = away - hole / 2;
  // The edge's distance grows by the share of a move that goes straight away from it; on the edge itself there is no such way.
  const [along, across] =
    Math.abs(away) > 1e-6
      ? [Math.abs((to.x - at.x) / away), Math.abs((to.y - at.y) / away)]
      : Math.abs(at.y) > width / 2 - 1e-6
        ? [0, 1]
        : [1, 0];
  const missing = wall - left;
  const edge = across > along ? "side" : to.x < at.x === away > 0 ? "front" : "end";
  const mend = {
    side: raiseTo("tailpiece.width", width + (2 * missing) / across),
    front: raiseTo("tailpiece.hole.at", holeAt + missing / along),
    end: raiseTo("tailpiece.length", length + missing / along),
  }[edge];
  const first = { side: "tailpiece.width", front: "tailpiece.hole.at", end: "tailpiece.length" }[edge];
  return {
    ...{ left, between: `the hole of ${name} and the plate's ${edge}`, place: null },
    ...{ ids: [first, "tailpiece.spread", "tailpiece.hole", "tailpiece.wall"], mend },
  };
}

/** A post's hole lies at a share of the plate's length from its end, so it moves by the rest when the end does. */
function toPost(
  { end, length, hole, wall }: TailpieceWallsInput,
  { name, at }: StringHole,
  post: Post,
): TailpieceWall {
  const distance = apart(at, post.at);
  const left = distance - (hole + post.size) / 2;
  const gained = (Math.abs(at.x - post.at.x) / distance) * (1 - (end - post.at.x) / length);
  return {
    ...{ left, between: `the hole of ${name} and ${post.id}`, place: post.id },
    ids: ["tailpiece.length", "tailpiece.hole.at", "tailpiece.wall"],
    mend: gained > 0.2 ? raiseTo("tailpiece.length", length + (wall - left) / gained) : moved(post),
  };
}

function moved({ id }: Post): string {
  return `move hole ${id} of the design's tailpiece or make it smaller`;
}

function betweenPosts(a: Post, b: Post): TailpieceWall {
  const left = apart(a.at, b.at) - (a.size + b.size) / 2;
  const ids = ["tailpiece.width", "tailpiece.wall"];
  return { left, between: `${a.id} and ${b.id}`, place: b.id, ids, mend: moved(b) };
}

function postWalls({ path }: TailpieceWallsInput, post: Post): TailpieceWall[] {
  const [radius, mend] = [post.size / 2, moved(post)];
  const ids = ["tailpiece.width", "tailpiece.length", "tailpiece.wall"];
  return [
    {
      ...{ left: edgeFrom(path, post.at).away - radius, between: `${post.id} and the plate's edge` },
      ...{ place: post.id, ids, mend },
    },
    {
      ...{ left: post.core - Math.abs(post.at.y) - radius, between: `${post.id} and the core's side` },
      ...{ place: post.id, ids: ["tailpiece.width", "core.width", "tailpiece.wall"], mend },
    },
  ];
}
