import { z } from "zod";
import { record } from "./record.ts";

/** The string counts that an instrument can have. */
export const counts = [4, 5, 6, 7] as const;

/** One of the string counts. */
export type Count = (typeof counts)[number];

/** A value for each string count that a design offers. */
export function perCount<Value extends z.ZodType>(value: Value) {
  const one = value.optional();
  return record({ 4: one, 5: one, 6: one, 7: one });
}

/** A value, or one for each string count. */
export function valueOrPerCount<Value extends z.ZodType>(value: Value) {
  return z.union([value, perCount(value)]);
}
