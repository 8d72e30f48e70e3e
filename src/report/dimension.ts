import type { Model } from "../workshop/model.ts";

/** A named number of the model, worked out when asked for; mm, degrees, N or Hz as `unit` says. */
export type Dimension = {
  readonly id: string;
  readonly label: string;
  readonly unit: "mm" | "deg" | "N" | "Hz" | "";
  readonly part: string;
  /** How far two reports may differ before it counts; in `unit`. */
  readonly tolerance: number;
  readonly of: (model: Model) => number;
};

type Of = Dimension["of"];

/** Tolerances of what is worked out (G: what a careful hand holds at the bench), mm and degrees; N and Hz as reported. */
export const usual = { length: 0.1, angle: 0.1, force: 0.5, pitch: 0.01 };

/** A length that is worked out, with the usual tolerance. */
export function length(part: string, id: string, label: string, of: Of): Dimension {
  return { id, label, unit: "mm", part, tolerance: usual.length, of };
}

/** An angle that is worked out, with the usual tolerance. */
export function angle(part: string, id: string, label: string, of: Of): Dimension {
  return { id, label, unit: "deg", part, tolerance: usual.angle, of };
}
