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

describe("what a store has copied once", () => {
  const long = (y: number) => Array.from({ length: 60 }, (_, x) => ({ x, y }));
  const seen: unknown[] = [];
  const look = step("look", 1, (input: { points: readonly { x: number; y: number }[]; k: number }) => {
    seen.push(input.points);
    return input.points.reduce((sum, { y }) => sum + y, input.k);
  });

  it("is not copied again where nobody can change it", () => {
    const store = memoryStore();
    const points = Object.freeze(long(1).map((point) => Object.freeze(point)));
    const answers = [0, 1].map((k) => store.answer(look, { points, k }));
    expect(answers.map(({ value }) => value)).toEqual([60, 61]);
    expect(seen.at(-1)).toBe(seen.at(-2));
    expect(answers[1]!.key).toBe(memoryStore().answer(look, { points: long(1), k: 1 }).key);
  });

  it("is copied again where somebody could, even where only its list is frozen", () => {
    const store = memoryStore();
    for (const points of [long(1), Object.freeze(long(1))]) {
      const before = store.answer(look, { points, k: 0 });
      points[7]!.y = 2;
      const after = store.answer(look, { points, k: 0 });
      expect([before.value, after.value]).toEqual([60, 61]);
      expect(after.key).not.toBe(before.key);
    }
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
