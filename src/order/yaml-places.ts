import { isMap, isScalar, isSeq, type Node, type Pair } from "yaml";
import type { Position } from "./problem.ts";
import type { Written } from "./yaml.ts";

/** The text of a key of a map; none for a key that is a list or a map. */
export function keyText(key: unknown): string {
  return isScalar(key) ? String(key.value) : "";
}

/** The path of the innermost value that reaches over a place in the text. */
export function pathAt(node: unknown, offset: number): PropertyKey[] {
  const over = (child: unknown) => {
    const range = (child as Node | null)?.range;
    return range !== undefined && range !== null && range[0] <= offset && offset <= range[2];
  };
  if (isSeq(node)) {
    const i = node.items.findIndex(over);
    return i < 0 ? [] : [i, ...pathAt(node.items[i], offset)];
  }
  if (!isMap(node)) return [];
  const pair = (node.items as Pair<Node, Node>[]).find(({ key, value }) => over(key) || over(value));
  return pair === undefined ? [] : [keyText(pair.key), ...pathAt(pair.value, offset)];
}

/** Where values and keys stand in a document, by their paths. */
export function places(root: unknown, place: (offset: number) => Position): Pick<Written, "at" | "atKey"> {
  const walk = (path: readonly PropertyKey[]) => {
    let node = root;
    let offset = (root as Node | null)?.range?.[0] ?? 0;
    for (const step of path) {
      if (isSeq(node)) node = node.items[Number(step)];
      else if (isMap(node)) {
        const pair = (node.items as Pair<Node, Node>[]).find(({ key }) => keyText(key) === String(step));
        node = pair?.value;
        offset = pair?.key.range?.[0] ?? offset;
      } else break;
      offset = (node as Node | undefined)?.range?.[0] ?? offset;
    }
    return { node, offset };
  };
  return {
    at: (path) => place(walk(path).offset),
    atKey: (path, name) => {
      const { node, offset } = walk(path);
      const pairs = isMap(node) ? (node.items as Pair<Node, Node>[]) : [];
      return place(pairs.find(({ key }) => keyText(key) === name)?.key.range?.[0] ?? offset);
    },
  };
}
