/** How each property of an object is worked out. */
export type Getters<T extends object> = { readonly [K in keyof T]: () => T[K] };

/**
 * An object whose properties are worked out when first asked for and kept as long as it lives.
 *
 * Each maker runs once at most; makers may ask the object itself for other properties, as long as none comes round to
 * itself.
 */
export function lazy<T extends object>(makers: Getters<T>): T {
  const result = {} as T;
  for (const key of Object.keys(makers) as (keyof T)[]) {
    Object.defineProperty(result, key, {
      configurable: true,
      enumerable: true,
      get() {
        const value = makers[key]();
        Object.defineProperty(result, key, { value, enumerable: true });
        return value;
      },
    });
  }
  return result;
}
