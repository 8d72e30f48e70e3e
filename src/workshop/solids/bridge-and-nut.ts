import type { Solid } from "../../geometry/solid/solid.ts";
import { bridgeSolid } from "../../instrument/bridge/solid.ts";
import { nutSolid } from "../../instrument/nut/solid.ts";
import { stepKey } from "../../step/step-key.ts";
import { handed } from "./handed.ts";
import type { SolidFile, SolidFiles } from "./solid-file.ts";

/** The finished bridge and the finished nut as they stand on the instrument; of a left-hand order the other way round. */
export const bridgeAndNutFiles: SolidFiles = ({ spec: { hand }, instrument }) => {
  const file = (name: "bridge" | "nut", key: string, solid: () => Solid): SolidFile => ({
    ...{ name, folder: "outlines", part: name },
    what: `the finished ${name} as a solid, for looking at and for checking`,
    ...handed(hand, key, solid),
  });
  return [
    file("bridge", stepKey(bridgeSolid, instrument.bridgeSolidInput), () => instrument.bridgeSolid),
    file("nut", stepKey(nutSolid, instrument.nutSolidInput), () => instrument.nutSolid),
  ];
};
