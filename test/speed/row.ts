/**
 * One timing: the median of what was measured, in `unit`, and how it stands to what it is measured `against`. The ratio is ours
 * over theirs, or, where `against` says "faster than", theirs over ours.
 */
export type Row = {
  readonly name: string;
  readonly median: number;
  readonly unit: string;
  readonly against: string;
  readonly ratio: number;
};
