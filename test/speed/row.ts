/** One line of the speed report: the median of ours in `unit`, what it was run against, and that one's median over ours. */
export type Row = {
  name: string;
  median: number;
  unit: string;
  against: string;
  ratio: number;
};
