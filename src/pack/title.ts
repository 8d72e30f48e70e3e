import type { Finding } from "../checks/check.ts";
import type { Title } from "../drawing/flat/titled.ts";
import { lettered } from "../order/lettering.ts";
import type { Spec } from "../order/spec.ts";

/** What is titled: its part, its fingerprint, from where it is seen, and the drawings whose overruled refusals it bears. */
export type Titled = {
  readonly part: string;
  readonly fingerprint: string;
  readonly seenFrom: string;
  readonly shows: readonly string[];
};

/** The title of an order's drawing, with the reason of every refusal that was overruled for what it shows. */
export function titleFor(spec: Spec, { shows, ...own }: Titled, found: readonly Finding[]): Title {
  const reasons = found.filter(
    ({ holds, overruled }) => overruled !== undefined && holds.some((name) => shows.includes(name)),
  );
  return {
    ...{ order: spec.order, hand: spec.hand, ...own },
    overruled: reasons.map(({ id, overruled }) => lettered(`${id}: ${overruled}`) ?? id),
  };
}
