import type { PathPoint } from "../path.ts";

/** A vertex of a path in the making, with the name of the station that stands there, if any. */
export type MarkedPoint = PathPoint & { readonly id?: string };
