import { facet } from "../../../geometry/facet.ts";
import { type Annotated, type Annotation, annotated } from "../annotate.ts";
import { textBox } from "../lettering.ts";
import type { SheetLine } from "../sheet.ts";
import { liesUnder } from "./lies-under.ts";

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
  // Most ways would write over the picture: those are passed over before anything else is looked at.
  const isOver = liesUnder(plain);
  const quick = names.map(({ ways, ...rest }): Annotation => {
    const open = function* () {
      for (const way of ways()) if (!way.texts.some((text) => isOver(textBox(text)))) yield way;
    };
    return { ...rest, ways: open };
  });
  const made = annotated({ lines: plain, texts: [] }, quick);
  if (made.kind !== "ok") return made;
  const { texts, lines: all } = made.marks;
  return { kind: "ok", marks: { texts, lines: [...lines, ...all.slice(lines.length)] } };
}
