import { type Copies, plainCopy } from "./plain.ts";
import type { Step } from "./step.ts";
import { keyOver } from "./step-key.ts";

/** What a step answered, and the key that it answered under. */
export type Answer<Out> = { readonly key: string; readonly value: Out };

/** Keeps the answers of steps by their key and runs only what it doesn't know. */
export type Store = {
  readonly answer: <In, Out>(step: Step<In, Out>, input: In) => Answer<Out>;
};

/**
 * A store in memory, kept for as long as whoever made it keeps it: one run, or a page between edits.
 *
 * `onRun` hears the name of each step that really runs. Answers are frozen all through (but for binary data, which can't
 * be), so that no caller changes what another one gets.
 */
export function memoryStore(onRun: (name: string) => void = () => {}): Store {
  const known = new Map<string, unknown>();
  // Most of an input is what other steps answered, and stays the same from one model to the next.
  const copies: Copies = new WeakMap();
  return {
    answer: <In, Out>(step: Step<In, Out>, input: In): Answer<Out> => {
      const { value, text } = plainCopy(input, copies);
      const key = keyOver(step.name, step.version, text);
      if (!known.has(key)) {
        onRun(step.name);
        known.set(key, frozen(step.work(value as In)));
      }
      return { key, value: known.get(key) as Out };
    },
  };
}

function frozen<T>(value: T): T {
  if (typeof value !== "object" || value === null || ArrayBuffer.isView(value) || Object.isFrozen(value))
    return value;
  Object.freeze(value);
  for (const item of Object.values(value)) frozen(item);
  return value;
}
