/** What stands round a measured number: its tolerance where it has one, its unit, and words before and after it. */
export type Wording = {
  readonly tolerance?: number | undefined;
  readonly unit?: "mm" | "deg" | undefined;
  readonly prefix?: string | undefined;
  readonly suffix?: string | undefined;
};

/** A measured number as it is written: "24.11 ±0.10", "10.00° ±0.20°"; two decimals, as the reports of the shop are read. */
export function dimensionText(value: number, { tolerance, unit, prefix = "", suffix = "" }: Wording): string {
  const sign = unit === "deg" ? "°" : "";
  const number = (n: number) => `${n.toFixed(2)}${sign}`;
  const allowed = tolerance === undefined ? "" : ` ±${number(tolerance)}`;
  return `${prefix}${number(value)}${allowed}${suffix}`;
}
