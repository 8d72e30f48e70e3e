import { neckSolid } from "../../instrument/neck/solid.ts";
import { hashOf } from "../../step/key.ts";
import { stepKey } from "../../step/step-key.ts";
import type { SolidFiles } from "./solid-file.ts";
import { turnedOver } from "./turned-over.ts";

/** The finished neck, for looking at and for checking; of a left-hand order the other way round. */
export const neckSolidFile: SolidFiles = ({ spec: { hand }, instrument }) => {
  const key = stepKey(neckSolid, instrument.neckSolidInput);
  return [
    {
      ...{ name: "neck", folder: "outlines", part: "neck" },
      what: "the finished neck as a solid, for looking at and for checking",
      key: hand === "left" ? hashOf(`left\n${key}`) : key,
      solid: () =>
        hand === "left"
          ? { kind: "place", solid: instrument.neckSolid, frame: turnedOver }
          : instrument.neckSolid,
    },
  ];
};
