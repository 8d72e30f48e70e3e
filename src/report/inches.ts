/** A length as inches to the nearest 1/64, and how far that is from the length itself, mm (positive: the fraction is longer). */
export type Inches = { readonly text: string; readonly error: number };

const parts = 64;
const inch = 25.4;

/** A length in mm as inches: whole ones and a fraction of 64ths or fewer, such as `12 53/64`; under half of 1/64 it is 0. */
export function inchesOf(mm: number): Inches {
  const count = Math.round((Math.abs(mm) / inch) * parts);
  const [whole, rest] = [Math.floor(count / parts), count % parts];
  let [top, bottom] = [rest, parts];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const text = [
    ...(whole > 0 || rest === 0 ? [String(whole)] : []),
    ...(rest > 0 ? [`${top}/${bottom}`] : []),
  ].join(" ");
  const value = Math.sign(mm) * count * (inch / parts);
  return { text: mm < 0 && count > 0 ? `-${text}` : text, error: value - mm };
}

/** How a report has a length in inches beside its mm: the nearest 1/64 and what that is off by, mm. */
export function inchesText(mm: number): string {
  const { text, error } = inchesOf(mm);
  const off = Math.round(error * 100) / 100 + 0;
  return `${text} in (${off > 0 ? "+" : ""}${off.toFixed(2)})`;
}
