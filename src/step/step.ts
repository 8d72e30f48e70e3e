/**
 * One piece of derived work: a name, a version to be raised whenever its result may change for the same input, and a pure
 * function from plain data to a value.
 */
export type Step<In, Out> = {
  readonly name: string;
  readonly version: number;
  readonly work: (input: In) => Out;
};

/**
 * Declare a step.
 *
 * `input` must be plain data and just what the work needs, never a whole spec: what stands in it decides what runs again.
 * The work sees its input rounded to 1e-6 and frozen, so the same key always means the same input.
 */
export function step<In, Out>(name: string, version: number, work: (input: In) => Out): Step<In, Out> {
  return { name, version, work };
}
