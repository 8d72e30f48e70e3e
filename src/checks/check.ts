import type { Spec } from "../order/spec.ts";
import type { Model } from "../workshop/model.ts";

/** What a check answers: nothing to say, something to look at, or a set-up that must not be made. */
export type Status = "pass" | "attend" | "refuse";

/** What one check found. `found` and `limit` are in `unit`; `why` is one plain sentence; `source` says where the limit is from. */
export type Finding = {
  readonly id: string;
  readonly status: Status;
  readonly stake: "injury" | "spoilage";
  readonly subject: string;
  readonly found: number;
  readonly limit: number;
  readonly unit: string;
  readonly why: string;
  readonly source: string;
  /** The files that are not written while this refuses, by their names without ending. */
  readonly holds: readonly string[];
  /** The reason of whoever overruled a refusal in the order. */
  readonly overruled?: string;
};

/** A check: an id that never changes, the specs it applies to (all unless it says so), and what it finds in a model. */
export type Check = {
  readonly id: string;
  readonly applies?: (spec: Spec) => boolean;
  readonly of: (model: Model) => Omit<Finding, "id">;
};
