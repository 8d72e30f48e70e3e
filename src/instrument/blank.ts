/** A blank's size, mm; its length runs along the grain. */
export type Blank = { readonly length: number; readonly width: number; readonly thickness: number };

/** What lengths of a blank are sawn to, and its width and thickness planed to, mm. */
const steps = { length: 5, planed: 1 };

/** The least blank of whole measures that holds so much, mm: rounded up to what is measured off. */
export function blankHolding({ length, width, thickness }: Blank): Blank {
  const up = (value: number, to: number) => Math.ceil(value / to - 1e-9) * to;
  return {
    length: up(length, steps.length),
    width: up(width, steps.planed),
    thickness: up(thickness, steps.planed),
  };
}
