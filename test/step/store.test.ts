import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainCopy } from "../../src/step/plain.ts";
import { rounded } from "../../src/step/rounded.ts";
import { step } from "../../src/step/step.ts";
import { memoryStore } from "../../src/step/store.ts";

const double = step("double", 1, ({ x }: { x: number }) => ({ twice: 2 * x }));

describe("a store", () => {
  it("runs a step once for inputs that are the same to a millionth, and again for others", () => {
    const ran: string[] = [];
    const store = memoryStore((name) => ran.push(name));
    const first = store.answer(double, { x: 1.2 });
    expect(store.answer(double, { x: 1.2 + 3e-7 })).toEqual(first);
    expect(ran).toEqual(["double"]);
    expect(store.answer(double, { x: 1.200001 }).key).not.toBe(first.key);
    expect(ran).toEqual(["double", "double"]);
  });

  it("gives the same answer whichever of two near inputs came first", () => {
    const [a, b] = [{ x: 1.2 }, { x: 1.2 + 3e-7 }];
    const ab = memoryStore();
    const ba = memoryStore();
    expect(ab.answer(double, a).value).toEqual(ba.answer(double, b).value);
  });

  it("tells name, version and key order apart as it should", () => {
    const store = memoryStore();
    const two = step("two", 1, (_: { a: number; b: number }) => 1);
    const newer = step("two", 2, (_: { a: number; b: number }) => 1);
    expect(store.answer(two, { a: 1, b: 2 }).key).toBe(store.answer(two, { b: 2, a: 1 }).key);
    expect(store.answer(two, { a: 1, b: 2 }).key).not.toBe(store.answer(newer, { a: 1, b: 2 }).key);
    expect(store.answer(two, { a: 1, b: 2 }).key).not.toBe(store.answer(two, { a: 2, b: 1 }).key);
  });

  it("freezes answers all through, so that one reader can't change another's", () => {
    const nested = step("nested", 1, (_: { x: number }) => ({ list: [{ deep: 1 }] }));
    const { value } = memoryStore().answer(nested, { x: 1 });
    expect(() => {
      (value.list[0] as { deep: number }).deep = 2;
    }).toThrow(TypeError);
  });
});

describe("plain data", () => {
  it("refuses what could hide a dependency: functions, instances, NaN, symbols", () => {
    class Hidden {}
    for (const odd of [() => 1, new Hidden(), new Map(), new Date(0), Number.NaN, Symbol("s"), 10n]) {
      expect(() => plainCopy({ inside: [odd] })).toThrow(/input\.inside\[0\]|not finite/);
    }
  });

  it("has one text for one meaning", () => {
    expect(plainCopy({ b: -0, a: undefined }).text).toBe('{"b":0}');
    expect(plainCopy({ a: 1, b: [true, null, "x"] }).text).toBe(
      plainCopy({ b: [true, null, "x"], a: 1 }).text,
    );
    expect(plainCopy(["1", 1]).text).toBe('["1",1]');
  });

  it("keeps any JSON value as it is, but for rounding", () => {
    const json = fc
      .jsonValue({ noUnicodeString: false })
      .filter((value) => !JSON.stringify(value).includes("__proto__"));
    fc.assert(
      fc.property(json, (value) => {
        const flat = (x: unknown): unknown =>
          typeof x === "number"
            ? rounded(x)
            : Array.isArray(x)
              ? x.map(flat)
              : typeof x === "object" && x !== null
                ? Object.fromEntries(Object.entries(x).map(([k, v]) => [k, flat(v)]))
                : x;
        expect(plainCopy(value).value).toEqual(flat(value));
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});
