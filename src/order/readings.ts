import type { z } from "zod";
import type { Checked } from "./problem.ts";
import { type ReadFile, readAs } from "./read.ts";

/** Reads a file's text in the form of a schema, as `readAs` does; `file` is what messages call it. */
export type Readings = typeof readAs;

/**
 * Readings that are kept as long as their holder: many orders draw on the same designs, shops and strings, and each text is
 * read once for each form and place.
 */
export function keptReadings(): Readings {
  const kept = new Map<z.ZodType, Map<string, Checked<ReadFile<unknown>>>>();
  return <Schema extends z.ZodType>(schema: Schema, text: string, file: string) => {
    const ofForm = kept.get(schema) ?? new Map<string, Checked<ReadFile<unknown>>>();
    kept.set(schema, ofForm);
    const name = `${file}\n${text}`;
    const found = ofForm.get(name) ?? readAs(schema, text, file);
    ofForm.set(name, found);
    return found as Checked<ReadFile<z.output<Schema>>>;
  };
}
