import type { Solid } from "../../geometry/solid/solid.ts";
import type { Store } from "../../step/store.ts";
import type { Model } from "../model.ts";

/** A solid that a pack holds as STL and 3MF: its name without ending, its folder, whose part it is and what it is for. */
export type SolidFile = {
  readonly name: string;
  readonly folder: "outlines" | "printed";
  readonly part: string;
  readonly what: string;
  /** Its recipe's key, which its fingerprint is taken from; asking for it works nothing out. */
  readonly key: string;
  readonly solid: (store: Store) => Solid;
};

/** What makes solid files of a model. */
export type SolidFiles = (model: Model) => readonly SolidFile[];
