type Place = readonly [number, number];

/** Whether a closed polygon crosses or touches itself; every pair of sides is looked at. */
export function crosses(polygon: readonly Place[]): boolean {
  const count = polygon.length;
  for (let i = 0; i < count; i++) {
    const [a, b] = [polygon[i]!, polygon[(i + 1) % count]!];
    for (let j = i + 2; j < count; j++) {
      if (i === 0 && j === count - 1) continue;
      if (sidesMeet(a, b, polygon[j]!, polygon[(j + 1) % count]!)) return true;
    }
    const c = polygon[(i + 2) % count]!;
    const back = (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;
    if (side(a, b, c) === 0 && back) return true;
  }
  return false;
}

function side(a: Place, b: Place, p: Place): number {
  return Math.sign((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]));
}

function sidesMeet(a: Place, b: Place, c: Place, d: Place): boolean {
  if (Math.max(a[0], b[0]) < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) < Math.min(a[0], b[0]))
    return false;
  if (Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1]))
    return false;
  return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
}
