import { z } from "zod";

/**
 * A map with just these keys. A key that is unknown is a problem whose message lists the known ones, so that whoever
 * reports it can name the nearest.
 */
export function record<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === "unrecognized_keys" ? Object.keys(shape).join(", ") : "a map of named values",
  });
}
