import { hashOf } from "./key.ts";
import { noCopies, plainCopy } from "./plain.ts";
import type { Step } from "./step.ts";
import { keyText } from "./step-key.ts";

/** What a step answered, and the key that it answered under, which is worked out when it is asked for. */
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
  // By what the key is the hash of: two texts that differ never share one, and most keys are never asked for.
  const known = new Map<string, Answer<unknown>>();
  // Most of an input is what other steps answered, and stays the same from one model to the next.
  const copies = noCopies();
  return {
    answer: <In, Out>(step: Step<In, Out>, input: In): Answer<Out> => {
      const { value, text } = plainCopy(input, copies);
      const whole = keyText(step, text);
      const found = known.get(whole);
      if (found !== undefined) return found as Answer<Out>;
      onRun(step.name);
      const answer = answered(whole, frozen(step.work(value as In)));
      known.set(whole, answer);
      return answer;
    },
  };
}

function answered<Out>(whole: string, value: Out): Answer<Out> {
  let key: string | undefined;
  return Object.freeze({
    get key() {
      key ??= hashOf(whole);
      return key;
    },
    value,
  });
}

function frozen<T>(value: T): T {
  if (typeof value !== "object" || value === null || ArrayBuffer.isView(value) || Object.isFrozen(value))
    return value;
  Object.freeze(value);
  for (const item of Object.values(value)) frozen(item);
  return value;
}
