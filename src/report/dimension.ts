import { usual } from "../order/usual-tolerance.ts";
import type { Model } from "../workshop/model.ts";

/** A named number of the model, worked out when asked for; mm, degrees, N, MPa, Hz, g, cm³ or N·mm as `unit` says. */
export type Dimension = {
  readonly id: string;
  readonly label: string;
  readonly unit: "mm" | "mm²" | "deg" | "N" | "MPa" | "Hz" | "g" | "cm³" | "N·mm" | "";
  readonly part: string;
  /** How far two reports may differ before it counts; in `unit`. */
  readonly tolerance: number;
  readonly of: (model: Model) => number;
};

type Of = Dimension["of"];

/** A length that is worked out, with the usual tolerance. */
export function length(part: string, id: string, label: string, of: Of): Dimension {
  return { id, label, unit: "mm", part, tolerance: usual.length, of };
}

/** An angle that is worked out, with the usual tolerance. */
export function angle(part: string, id: string, label: string, of: Of): Dimension {
  return { id, label, unit: "deg", part, tolerance: usual.angle, of };
}

/** A mass that is worked out, with the usual tolerance. */
export function mass(part: string, id: string, label: string, of: Of): Dimension {
  return { id, label, unit: "g", part, tolerance: usual.mass, of };
}

/** A force that is worked out, with the usual tolerance. */
export function force(part: string, id: string, label: string, of: Of): Dimension {
  return { id, label, unit: "N", part, tolerance: usual.force, of };
}
