import { bodySolid } from "../../instrument/body/solid.ts";
import { stepKey } from "../../step/step-key.ts";
import { handed } from "./handed.ts";
import type { SolidFiles } from "./solid-file.ts";

/** The finished body in one piece as it stands round the core; of a left-hand order the other way round. */
export const bodySolidFile: SolidFiles = ({ spec: { hand }, instrument: { body } }) =>
  body === null
    ? []
    : [
        {
          ...{ name: "body", folder: "outlines", part: "body" },
          what: "the finished body as a solid, as it stands round the core, for looking at and for checking",
          ...handed(hand, stepKey(bodySolid, body.solidInput), () => body.solid),
        },
      ];
