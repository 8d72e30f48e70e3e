import { dimensionOf, type Spec } from "../order/spec.ts";

/** What the wood of a part is planed to, so that it is as thick as it is set when its veneers are on, mm. */
export function underVeneers(spec: Spec, on: string): number {
  const faces = spec.veneers.filter((veneer) => veneer.on === on).length;
  const whole = dimensionOf(spec, `${on.replace("-", ".")}.thickness`);
  return faces === 0 ? whole : whole - faces * dimensionOf(spec, "veneer.thickness");
}
