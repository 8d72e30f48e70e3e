import { existsSync } from "node:fs";
import { basename, dirname, extname, join, relative, resolve } from "node:path";
import { replaceFile } from "../files/replace-file.ts";
import { shownPath } from "../files/shown-path.ts";
import { newOrder } from "../order/new-order.ts";
import { commandLine, InputError, type Problem } from "../order/problem.ts";
import { readAs } from "../order/read.ts";
import { orderFile } from "../order/schema/order.ts";
import type { Common } from "./console.ts";
import { exit, run } from "./run.ts";

/** What `patternloft new` is given. */
export type NewGiven = Common & { readonly file: string };

/** Write a commented order to start from; what is there already is never overwritten. */
export function newFile(given: NewGiven): Promise<void> {
  return run(
    given,
    async ({ say, print, json }) => {
      const { file } = given;
      const fail = (found: string, allowed: string, hint: string): Problem => {
        return {
          code: "unreadable",
          position: { file: commandLine, line: 1, column: 1 },
          name: "file",
          found,
          allowed,
          hint,
        };
      };
      if (existsSync(file)) {
        throw new InputError([
          fail(`${shownPath(file)}, which is there already`, "a new file", "choose another name"),
        ]);
      }
      const text = newOrder(basename(file, extname(file)), schemaFor(file));
      const read = readAs(orderFile, text, shownPath(file));
      if (!read.ok)
        throw new InputError(
          read.problems.map((problem) => ({ ...problem, hint: "name the file as the order" })),
        );
      await replaceFile(file, text);
      if (json) print(`${JSON.stringify({ file: shownPath(file) })}\n`);
      say(`wrote ${shownPath(file)}; next: patternloft check ${shownPath(file)}`);
      return exit.done;
    },
    "file",
  );
}

/** The order schema as seen from the new file, where the models that it would use keep one. */
function schemaFor(file: string): string | undefined {
  const folder = dirname(resolve(file));
  const places = [
    join(folder, "schemas"),
    join(dirname(folder), "schemas"),
    join(folder, "models", "schemas"),
  ];
  const found = places.map((place) => join(place, "order.json")).find((path) => existsSync(path));
  return found === undefined ? undefined : relative(folder, found);
}
