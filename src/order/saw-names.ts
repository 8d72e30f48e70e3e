import type { Spec } from "./spec.ts";

/** The drawings that blanks are sawn to, by the names of their files without ending, and their parts. */
export const sawDrawings = {
  "wing-bass-saw": "wing-bass",
  "wing-treble-saw": "wing-treble",
  "body-saw": "body",
  "fingerboard-saw": "fingerboard",
} as const;

/** The name of a drawing that a blank is sawn to. */
export type SawDrawing = keyof typeof sawDrawings;

/** Whether an instrument has what a drawing saws: wings, a body in one piece, and always a fingerboard. */
export function hasSawDrawing({ wings, body }: Spec, file: SawDrawing): boolean {
  if (file === "fingerboard-saw") return true;
  return file === "body-saw" ? body !== null : wings !== null;
}
