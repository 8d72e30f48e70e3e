import type { Checked } from "./problem.ts";

/** What an order can refer to by name. */
export type Shelf = "designs" | "shops" | "strings" | "woods" | "hardware";

/** A text found, and what to call it in messages. */
export type FoundText = { readonly file: string; readonly text: string };

/** Where designs, shops, strings, woods and hardware are looked up; how they are stored is not its users' business. */
export type Library = {
  /** The text under a name on a shelf, or why it can't be read, or `undefined` where there is none. */
  readonly find: (shelf: Shelf, name: string) => Checked<FoundText> | undefined;
  /** The names on a shelf, in order. */
  readonly names: (shelf: Shelf) => readonly string[];
};
