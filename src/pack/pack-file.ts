import type { ReadBack } from "../files/dxf/read-back.ts";
import type { SolidReadBack } from "../files/read-back-solid.ts";

/** A file of a pack, by its path inside it: its text or its bytes, with what stands of it in the manifest. */
export type PackFile = {
  readonly path: string;
  readonly content: string | Uint8Array;
  readonly what: string;
  readonly fingerprint: string | null;
  /** The part that a picture shows, where it is one. */
  readonly pictureOf?: string;
  readonly readBack: ReadBack | SolidReadBack | null;
};

/** Thrown when a file that was written reads back as something else: the program is wrong, and nothing is published. */
export class ReadBackError extends Error {
  constructor(path: string, differences: readonly string[]) {
    super(`${path} reads back differently from the model: ${differences.slice(0, 5).join("; ")}`);
    this.name = "ReadBackError";
  }
}
