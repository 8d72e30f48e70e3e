import { stepKey } from "./step-key.ts";
import type { Answer, Store } from "./store.ts";

/** A store that gives a step's key at once, and has its value worked out by another store only if somebody asks for that. */
export function unasked(store: Store): Store {
  return {
    answer: (step, input) => {
      const key = stepKey(step, input);
      const answer: Answer<never> = {
        key,
        get value() {
          return store.answer(step, input).value as never;
        },
      };
      return answer;
    },
  };
}
