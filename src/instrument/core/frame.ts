/**
 * The core's front face: from x = `start` it lies `drop` under z = 0 and falls at `slope` degrees, positive toward the tail.
 * Lengths in mm.
 */
export type CoreFrame = { readonly start: number; readonly drop: number; readonly slope: number };

/** A place seen from the side: along and square out of some face, mm. */
export type SidePoint = { readonly x: number; readonly z: number };

/** The core's front at x, led on before its start too: z in mm. */
export function frontAt({ start, drop, slope }: CoreFrame, x: number): number {
  return -drop - (x - start) * Math.tan((slope * Math.PI) / 180);
}

/** A place of the instrument's axes in the core frame: x' along the core's front toward the tail, z' square out of it. */
export function intoCore({ start, drop, slope }: CoreFrame, { x, z }: SidePoint): SidePoint {
  const angle = (slope * Math.PI) / 180;
  const [along, up] = [x - start, z + drop];
  return {
    x: along * Math.cos(angle) - up * Math.sin(angle),
    z: along * Math.sin(angle) + up * Math.cos(angle),
  };
}
