/**
 * What is wrong with a set-up, by the check that tells it: what was found and what is allowed, in `unit`, and one plain sentence
 * that says which number would have to change to what.
 */
export type Fault = {
  readonly check:
    | "machine.missing"
    | "cutter.missing"
    | "cutter.short"
    | "cutter.large"
    | "cutter.feed"
    | "guide.missing"
    | "guide.bearing"
    | "guide.large"
    | "speed.mark"
    | "rim-speed"
    | "removal";
  readonly found: number;
  readonly limit: number;
  readonly unit: "mm" | "m/s" | "rpm" | "";
  readonly why: string;
};

/** A number as a message says it: at most two decimals. */
export function plain(value: number): string {
  return String(Math.round(value * 100) / 100);
}
