/**
 * One timing: the `median` in `unit`, and how many times the other, `against`, took or held of that: more than 1 is to our
 * credit. A row that is not a comparison of times says in `against` what its ratio means.
 */
export type Row = {
  readonly name: string;
  readonly median: number;
  readonly unit: string;
  readonly against: string;
  readonly ratio: number;
};
