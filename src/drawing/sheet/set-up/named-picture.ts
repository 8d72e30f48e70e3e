import { facet } from "../../../geometry/facet.ts";
import { type Annotated, type Annotation, annotated } from "../annotate.ts";
import type { SheetLine } from "../sheet.ts";

/** How far chords stray from arcs while names are placed, mm on paper: much less than what words keep off lines. */
const chord = 0.15;

/**
 * A picture with names for what is in it. Leaders may cross its heavy lines, which are no dimensions that are read by following them; words keep off
 * those as off any other line.
 */
export function namedPicture(lines: readonly SheetLine[], names: readonly Annotation[]): Annotated {
  const plain = lines.map(({ weight, path }): SheetLine => {
    return { weight: weight === "station" ? "edge" : weight, path: facet(path, chord) };
  });
  const made = annotated({ lines: plain, texts: [] }, names);
  if (made.kind !== "ok") return made;
  const { texts, lines: all } = made.marks;
  return { kind: "ok", marks: { texts, lines: [...lines, ...all.slice(lines.length)] } };
}
