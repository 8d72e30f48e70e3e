import type { RecessPart } from "./recess-part.ts";
import type { DesignFile } from "./schema/design.ts";

/** Whether a design has a part that something can be sunk into. */
export function hasPart({ wings, body }: DesignFile, part: RecessPart): boolean {
  return part === "neck" || (part === "body" ? body !== undefined : wings !== undefined);
}
