import type { Spec } from "../src/order/spec.ts";

/**
 * A board worked out anew from a report's own numbers, without the code that made them: its edges run straight, its ends are
 * circles through its edges, and every section between is the circle of its radius through two places under the outer strings,
 * which run straight but for the scoop. Lengths in mm.
 */
export function ownBoard(spec: Spec, all: Readonly<Record<string, number>>) {
  const of = (id: string) => all[id]!;
  const length = of("fingerboard.length");
  const [first, last] = [spec.strings[0]!.name, spec.strings.at(-1)!.name];
  const across = (name: string, x: number) => {
    const [nut, bridge] = [of(`string.${name}.offset.nut`), of(`string.${name}.offset.bridge`)];
    return nut + ((bridge - nut) * x) / of("string.length");
  };
  const half = (x: number) => {
    const [nut, end] = [of("fingerboard.width.nut"), of("fingerboard.width.end")];
    return (nut + ((end - nut) * x) / length) / 2;
  };
  const spread = (x: number) => across(first, x) - across(last, x);
  const radius = (x: number) =>
    of("fingerboard.radius") * (spec.surface === "cylinder" ? 1 : spread(x) / spread(length));
  const atEnd = (x: number, y: number) =>
    of("fingerboard.edge") + Math.sqrt(radius(x) ** 2 - y ** 2) - Math.sqrt(radius(x) ** 2 - half(x) ** 2);
  const under = (name: string, x: number, scoop: number) => {
    const [a, b] = [atEnd(0, across(name, 0)), atEnd(length, across(name, length))];
    return a + ((b - a) * x) / length - (4 * scoop * x * (length - x)) / length ** 2;
  };
  /** The middle of the section's circle. */
  const middle = (x: number) => {
    const high = { y: across(first, x), z: under(first, x, of("fingerboard.scoop.high")) };
    const low = { y: across(last, x), z: under(last, x, of("fingerboard.scoop.low")) };
    const apart = Math.hypot(high.y - low.y, high.z - low.z);
    const down = Math.sqrt(radius(x) ** 2 - apart ** 2 / 4) / apart;
    return {
      y: (high.y + low.y) / 2 + (high.z - low.z) * down,
      z: (high.z + low.z) / 2 - (high.y - low.y) * down,
    };
  };
  const top = (x: number, y: number) => middle(x).z + Math.sqrt(radius(x) ** 2 - (y - middle(x).y) ** 2);
  return { length, across, half, radius, middle, top };
}
