import { wingSolid } from "../../instrument/wing/solid.ts";
import { sides } from "../../order/side.ts";
import { stepKey } from "../../step/step-key.ts";
import { handed } from "./handed.ts";
import type { SolidFile, SolidFiles } from "./solid-file.ts";

/** The finished wings as they stand on the core; of a left-hand order the other way round. */
export const wingSolidFiles: SolidFiles = ({ spec: { hand }, instrument: { wings } }) =>
  wings === null
    ? []
    : sides.map((side): SolidFile => {
        const wing = wings[side];
        return {
          ...{ name: `wing-${side}`, folder: "outlines", part: `wing-${side}` },
          what: `the finished ${side} wing as a solid, as it stands on the core, for looking at and for checking`,
          ...handed(hand, stepKey(wingSolid, wing.solidInput), () => wing.solid),
        };
      });
