import { mustClose, type Shape } from "../../drawing/flat/flat.ts";
import { pathLength } from "../../geometry/measure.ts";
import { straight } from "./straight.ts";

/** Throws for a path that must never reach a machine: open where its layer wants it closed, without length, on a layer that no version of DXF can name. */
export function mustBeWritable({ layer, path: { closed, points } }: Shape): void {
  if (mustClose(layer) && !closed) throw new RangeError(`an open path on layer ${layer}`);
  if (points.length < 2) throw new RangeError(`a path without length on layer ${layer}`);
  if (!(pathLength({ closed, points }) > 1e-6))
    throw new RangeError(`a path without length on layer ${layer}`);
  if (!/^[A-Z][A-Z0-9_]*(-[A-Z0-9_]+)*$/.test(layer) || /-0_00$/.test(layer))
    throw new RangeError(`a layer named ${layer}`);
}

/** Throws for a note with a letter that a DXF would have to write in a way of its own. */
export function mustBePlain(text: string): void {
  if (!/^[\u0020-\u007e]+$/.test(text))
    throw new RangeError(`a note that isn't plain ASCII: ${JSON.stringify(text)}`);
}

/**
 * A bulge as it is written. It is no length: on a chord of 100 mm a millionth of it would already be 0.05 micrometres, so it keeps nine decimals.
 * Throws for one that is no number.
 */
export function roundedBulge(bulge: number): number {
  if (!Number.isFinite(bulge)) throw new RangeError(`a bulge that is not finite (${bulge})`);
  const value = Math.round(bulge * 1e9) / 1e9 + 0;
  return Math.abs(value) < straight ? 0 : value;
}
