import { type Annotated, type Annotation, annotated } from "../annotate.ts";
import type { SheetLine } from "../sheet.ts";

/**
 * A picture with names for what is in it. Leaders may cross its heavy lines, which are no dimensions that are read by following them; words keep off
 * those as off any other line.
 */
export function namedPicture(lines: readonly SheetLine[], names: readonly Annotation[]): Annotated {
  const plain = lines.map(
    (line): SheetLine => (line.weight === "station" ? { ...line, weight: "edge" } : line),
  );
  const made = annotated({ lines: plain, texts: [] }, names);
  if (made.kind !== "ok") return made;
  const { texts, lines: all } = made.marks;
  return { kind: "ok", marks: { texts, lines: [...lines, ...all.slice(lines.length)] } };
}
