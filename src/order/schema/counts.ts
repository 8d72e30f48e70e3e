import { z } from "zod";
import { record } from "./record.ts";

/** A value for each string count that a design offers. */
export function perCount<Value extends z.ZodType>(value: Value) {
  const one = value.optional();
  return record({ 4: one, 5: one, 6: one, 7: one });
}

/** A value, or one for each string count. */
export function valueOrPerCount<Value extends z.ZodType>(value: Value) {
  return z.union([value, perCount(value)], { error: "a value, or one a string count" });
}
