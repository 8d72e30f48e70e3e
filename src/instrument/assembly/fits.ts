import { sides } from "../../order/side.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";

/** A part's name, as its file has it, or `string.NAME`, or `pickup` for what lies in a cradle. */
type Names = { readonly first: string; readonly second: string };

/**
 * How two parts of the assembled instrument stand to each other; mm. `joint`: faces that lie on each other. `let-in`: one lies in the other with
 * a gap beside it, on a floor or right through. `clear`: they never meet; `least` is what must be between them, more than nothing where it is 0.
 */
export type Fit =
  | (Names & { readonly kind: "joint" })
  | (Names & { readonly kind: "let-in"; readonly clearance: number; readonly floor: boolean })
  | (Names & { readonly kind: "clear"; readonly least: number });

/** The joints and the fits of this build: which parts are meant to touch. */
function meetings(spec: Spec): Fit[] {
  const joint = (first: string, second: string): Fit => ({ kind: "joint", first, second });
  const cradled = spec.bridgeFoot.kind === "cradle";
  const covers = spec.recesses
    .filter(({ cover }) => cover)
    .map(({ id, in: part }): Fit => {
      const clearance = dimensionOf(spec, "cover.clearance");
      return { kind: "let-in", first: `cover-${id}`, second: part, clearance, floor: true };
    });
  return [
    ...covers,
    ...[joint("neck", "fingerboard"), joint("neck", "nut"), joint("nut", "fingerboard")],
    // Over a cradle the bridge stands on the pickup, whose top lies flush with the core.
    ...(cradled ? [joint("pickup", "bridge")] : [joint("neck", "bridge")]),
    ...(spec.wings === null ? [] : sides.map((side) => joint("neck", `wing-${side}`))),
    ...(spec.body === null
      ? []
      : [
          {
            ...{ kind: "let-in" as const, first: "neck", second: "body" },
            clearance: dimensionOf(spec, "body.recess.clearance"),
            floor: spec.body.core !== "through",
          },
        ]),
  ];
}

/** What must be between two parts that never meet, where a design says so. */
function leastBetween(spec: Spec, first: string, second: string): number {
  return first === "neck" && second === "tailpiece" ? dimensionOf(spec, "tailpiece.clear") : 0;
}

/** What a string may lie in or on: its slot, its notch, and the edge that it leaves the tailpiece over. */
const bearing = ["nut", "bridge", "tailpiece", "pickup"];

/**
 * Every two of some parts, and each string with every part that it must not touch: as they are meant to meet, or clear of each other.
 * Strings are not looked at among themselves, nor what lies in a cradle with the core that is cut for it.
 */
export function fitsOf(spec: Spec, parts: readonly string[], strings: readonly string[]): readonly Fit[] {
  const met = meetings(spec).filter((fit) => parts.includes(fit.first) && parts.includes(fit.second));
  const meant = (a: string, b: string) =>
    met.find(({ first, second }) => (first === a && second === b) || (first === b && second === a));
  const among = parts.flatMap((first, i) =>
    parts.slice(i + 1).flatMap((second): Fit[] => {
      const fit = meant(first, second);
      if (fit !== undefined) return [fit];
      if ([first, second].includes("pickup")) return [];
      if (spec.bridgeFoot.kind === "cradle" && first === "neck" && second === "bridge") return [];
      return [{ kind: "clear", first, second, least: leastBetween(spec, first, second) }];
    }),
  );
  const past = strings.flatMap((first) =>
    parts
      .filter((second) => !bearing.includes(second))
      .map((second): Fit => ({ kind: "clear", first, second, least: 0 })),
  );
  return [...among, ...past];
}
