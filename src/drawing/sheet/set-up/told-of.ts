import type { Finding } from "../../../checks/check.ts";
import type { SetUpWords } from "./set-up-words.ts";

/** What checks found that a set-up's sheet tells: those that ask to be attended to, and refusals that a person overruled, each with the reason. */
export function toldOf(found: readonly Finding[]): Pick<SetUpWords, "attended" | "overruled"> {
  return {
    attended: found.filter(({ status }) => status === "attend").map(({ id, why }) => `${id}: ${why}`),
    overruled: found.flatMap(({ id, why, overruled }) =>
      overruled === undefined ? [] : [`${id}: ${why}. Reason given: ${overruled}`],
    ),
  };
}
