import { dimensionOf, type Spec } from "../order/spec.ts";

/** What the wood of a part is planed to, so that it is as thick as it is set when its veneers are on, mm. */
export function underVeneers(spec: Spec, on: string): number {
  const faces = spec.veneers.filter((veneer) => veneer.on === on).length;
  return (
    dimensionOf(spec, `${on.replace("-", ".")}.thickness`) - faces * dimensionOf(spec, "veneer.thickness")
  );
}
