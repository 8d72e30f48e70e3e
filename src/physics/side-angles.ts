import { step } from "../step/step.ts";

/** Per string: tension in N, rise from nut to bridge and fall from bridge to tailpiece in degrees to z = 0. */
export type SideAnglesInput = {
  readonly tensions: readonly number[];
  readonly rises: readonly number[];
  readonly falls: readonly number[];
};

/** Tension-weighted means seen from the side, degrees: rise to the bridge, fall after it, and the angle they include. */
export type SideAngles = { readonly rise: number; readonly fall: number; readonly included: number };

/** The strings' mean angles at the bridge; a straight string includes 180 degrees. Splay is ignored, as seen from the side. */
export const sideAngles = step(
  "physics.side-angles",
  1,
  ({ tensions, rises, falls }: SideAnglesInput): SideAngles => {
    const total = tensions.reduce((sum, tension) => sum + tension, 0);
    const mean = (angles: readonly number[]) =>
      angles.reduce((sum, a, i) => sum + a * tensions[i]!, 0) / total;
    const [rise, fall] = [mean(rises), mean(falls)];
    return { rise, fall, included: 180 - rise - fall };
  },
);
