import type { Spec, SpecValue } from "../src/order/spec.ts";

/** A spec with values that no design would allow, as an order's. */
export function forced(spec: Spec, values: Readonly<Record<string, number>>): Spec {
  const changed = Object.entries(values).map(([id, value]): [string, SpecValue] => {
    const position = { file: "order.yaml", line: 9, column: 3 };
    return [id, { ...spec.values[id]!, value, source: "order", position }];
  });
  return { ...spec, values: { ...spec.values, ...Object.fromEntries(changed) } };
}

/** A spec with nothing sunk for the electronics, for a test of what they are sunk into. */
export function bare(spec: Spec): Spec {
  return { ...spec, recesses: [], bores: [] };
}

/** A spec that carries no rests either, for a test of a part by itself. */
export function alone(spec: Spec): Spec {
  return { ...bare(spec), rests: { chin: null, mounts: [], endpin: false } };
}

/** Every move to a number that a message tells to try: `raise pin.depth to 6.5 mm`. */
export function movesIn(message: string): { readonly id: string; readonly to: number }[] {
  return [...message.matchAll(/(?:raise|lower) ([a-z.]+) to (-?[\d.]+) mm/g)].map(([, id, to]) => {
    return { id: id!, to: Number(to) };
  });
}
