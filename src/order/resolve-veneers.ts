import { type Checked, type Problem, quoted } from "./problem.ts";
import type { ReadFile } from "./read.ts";
import type { DesignFile } from "./schema/design.ts";
import type { SpecVeneer } from "./spec-veneer.ts";

/** The veneers of a design, each on a part and a face that it has and that no other covers. */
export function resolveVeneers({ data, written }: ReadFile<DesignFile>): Checked<readonly SpecVeneer[]> {
  const list = data.veneers?.list ?? [];
  const problems = list.flatMap(({ id, on, face, pair }, i): Problem[] => {
    const [name, at] = [`veneer.${id}`, (key: string) => written.at(["veneers", "list", i, key])];
    const before = list.slice(0, i);
    const wrong = (key: string, found: string, allowed: string, hint: string): Problem => {
      return { code: "contradiction", position: at(key), name, found, allowed, hint };
    };
    const there = on === "body" ? data.body !== undefined : data.wings !== undefined;
    return [
      ...(there
        ? []
        : [wrong("on", `${quoted(on)} of a design without`, "a part of this design", "name another part")]),
      ...(pair === "mirrored" && on !== "body"
        ? [
            wrong(
              "pair",
              `a mirrored pair on ${quoted(on)}`,
              "none",
              "only a body's two halves mirror each other",
            ),
          ]
        : []),
      ...(before.some((one) => one.id === id)
        ? [{ ...wrong("id", quoted(id), "a name of its own", "choose another name"), code: "id" as const }]
        : []),
      ...(before.some((one) => one.on === on && one.face === face)
        ? [
            wrong(
              "face",
              `a second veneer on the ${face} of ${on}`,
              "one veneer a face",
              "remove one of them",
            ),
          ]
        : []),
    ];
  });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: list };
}
