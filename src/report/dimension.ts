import type { Model } from "../workshop/model.ts";

/** A named number of the model, worked out when asked for; mm, degrees, N or Hz as `unit` says. */
export type Dimension = {
  readonly id: string;
  readonly label: string;
  readonly unit: "mm" | "deg" | "N" | "Hz";
  readonly part: string;
  /** How far two reports may differ before it counts; in `unit`. */
  readonly tolerance: number;
  readonly of: (model: Model) => number;
};
