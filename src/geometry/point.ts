/** A place or a direction in the plane: mm, y a quarter turn counter-clockwise from x. */
export type Point = { readonly x: number; readonly y: number };
