import { hashOf } from "./key.ts";
import { plainCopy } from "./plain.ts";
import type { Step } from "./step.ts";

/** The key that a store answers a step's input under: SHA-256 over the step's name and version and the input's plain text. */
export function stepKey<In, Out>(step: Step<In, Out>, input: In): string {
  return hashOf(keyText(step, plainCopy(input).text));
}

/** What a step's key is the SHA-256 of, from the input's plain text. */
export function keyText(
  { name, version }: Pick<Step<never, unknown>, "name" | "version">,
  text: string,
): string {
  return `${name}\n${version}\n${text}`;
}
