import type { Spec } from "../../order/spec.ts";
import type { Answer, Store } from "../../step/store.ts";
import type { Model } from "../../workshop/model.ts";
import type { Flat } from "./flat.ts";
import type { FromNumbers } from "./from-numbers.ts";

/** A machine file of a pack: its name without ending, its folder, what it shows and from where it is seen. */
export type FlatFile = {
  readonly name: string;
  readonly folder: "outlines" | "fixtures";
  readonly part: string;
  readonly what: string;
  /** From where it is seen; a side view of a left-hand order is seen from the other side. */
  readonly seenFrom:
    | "front"
    | "tail"
    | "head's front"
    | "core's front"
    | "core's back"
    | "back"
    | "outside"
    | { readonly right: string; readonly left: string };
  /** From where it is seen, where that follows from how the work lies on a machine. */
  readonly seenAsCut?: (model: Model) => string;
  /** The specs that it is made for; all unless it says so. */
  readonly applies?: (spec: Spec) => boolean;
  /** What of it is measured, and not pricked through the full-size paper; nothing unless it says so. */
  readonly fromNumbers?: (spec: Spec) => FromNumbers | undefined;
  /** Its notes that may be broken into lines, each whole; none unless it says so. */
  readonly remarks?: (model: Model, store: Store) => readonly string[];
  readonly of: (model: Model, store: Store) => Answer<Flat>;
};
