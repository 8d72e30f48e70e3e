import { dimensionOf, type Spec } from "../../order/spec.ts";
import { onHead } from "../head/frame.ts";
import type { NeckPlan } from "./plan.ts";
import type { ProfileInput } from "./profile.ts";
import type { NeckSide } from "./side.ts";

/** What the neck's sections follow from, of a spec and its outlines; throws where it has none (see contradictions.ts). */
export function profileInput(spec: Spec, plan: NeckPlan, side: NeckSide): ProfileInput {
  if (plan.kind !== "ok" || side.kind !== "ok") throw new RangeError("the neck has no outlines");
  const of = (id: string) => dimensionOf(spec, id);
  const face = { nutThickness: of("nut.thickness"), angle: of("head.angle") };
  return {
    ...{ plan: plan.path, side: side.path, nutThickness: of("nut.thickness"), headAngle: of("head.angle") },
    head: { box: onHead(face, of("head.volute"), -of("head.thickness")).x, whole: 0 },
    core: {
      whole: Math.max(of("neck.transition.start"), of("neck.station.heel")),
      box: of("neck.heel.end"),
    },
    fullness: {
      nut: { x: of("neck.station.nut"), of: of("neck.fullness.nut") },
      heel: { x: of("neck.station.heel"), of: of("neck.fullness.heel") },
    },
  };
}

/** The stations at which the neck has sections and gauges, from the nut: the two named ones, and the design's between them. */
export function neckStations(spec: Spec): { readonly name: string; readonly x: number }[] {
  const of = (id: string) => dimensionOf(spec, id);
  const [nut, heel] = [of("neck.station.nut"), of("neck.station.heel")];
  const between = spec.stations.neck.filter((x) => x > nut && x < heel);
  return [
    { name: "nut", x: nut },
    ...between.map((x) => ({ name: String(x), x })),
    { name: "heel", x: heel },
  ];
}
