import type { Finding } from "../src/checks/check.ts";
import { checks, findings } from "../src/checks/checks.ts";
import type { Model } from "../src/workshop/model.ts";

/** What one check finds in a model, with no other asked; nothing where it doesn't apply or there is no such check. */
export function foundBy(model: Model, id: string): Finding | undefined {
  return findings(
    model,
    checks.filter((check) => check.id === id),
  )[0];
}
