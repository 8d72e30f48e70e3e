import { hashOf } from "./key.ts";
import { plainCopy } from "./plain.ts";
import type { Step } from "./step.ts";

/** The key that a store answers a step's input under: SHA-256 over the step's name and version and the input's plain text. */
export function stepKey<In, Out>(step: Step<In, Out>, input: In): string {
  return keyOver(step.name, step.version, plainCopy(input).text);
}

/** The same from the input's plain text. */
export function keyOver(name: string, version: number, text: string): string {
  return hashOf(`${name}\n${version}\n${text}`);
}
