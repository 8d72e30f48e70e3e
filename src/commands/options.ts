import { commandLine, InputError } from "../order/problem.ts";
import type { Options } from "../order/resolve.ts";

/** Options that try a variant of an order, as they were typed. */
export type Variant = {
  readonly strings?: string | undefined;
  readonly hand?: string | undefined;
  readonly set?: readonly string[] | undefined;
};

/** Typed options as data; a `--set` that isn't NAME=VALUE is a problem of the input. */
export function variantOptions({ strings, hand, set = [] }: Variant): Options {
  return { strings, hand, set: set.map(splitSet) };
}

function splitSet(text: string): { name: string; text: string } {
  const [, name, value] = /^([^=]+)=(.*)$/s.exec(text) ?? [];
  if (name !== undefined && value !== undefined) return { name: name.trim(), text: value.trim() };
  throw new InputError([
    {
      ...{ code: "syntax", position: { file: commandLine, line: 1, column: 1 }, name: "set" },
      ...{
        found: JSON.stringify(text),
        allowed: "--set NAME=VALUE",
        hint: 'such as --set "string.length=330 mm"',
      },
    },
  ]);
}
