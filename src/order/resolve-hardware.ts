import type { HardwareItem } from "./hardware-item.ts";
import { didYouMean } from "./nearest.ts";
import { type Problem, quoted } from "./problem.ts";
import type { ReadFile } from "./read.ts";
import type { DesignFile } from "./schema/design.ts";
import type { HardwareFile } from "./schema/hardware-items.ts";
import type { SpecHardware } from "./spec.ts";

/** Every item that a design names, with where it does. */
function named({
  hardware = [],
  recesses,
}: DesignFile): { readonly item: string; readonly path: PropertyKey[] }[] {
  return [
    ...hardware.flatMap(({ item }, i) =>
      item === undefined ? [] : [{ item, path: ["hardware", i, "item"] }],
    ),
    ...(recesses?.list ?? []).flatMap(({ holds }, i) => {
      return typeof holds === "string" ? [{ item: holds, path: ["recesses", "list", i, "holds"] }] : [];
    }),
  ];
}

/** The items that a design names and the file of hardware doesn't know: neither their sizes nor their mass would be known. */
export function hardwareProblems(
  { data, written }: ReadFile<DesignFile>,
  { hardware }: HardwareFile,
): Problem[] {
  const known = hardware.map(({ item }) => item);
  return named(data)
    .filter(({ item }) => !known.includes(item))
    .map(({ item, path }) => ({
      ...{ code: "unknown-name", position: written.at(path), name: path.map(String).join(".") },
      ...{ found: quoted(item), allowed: known.join(", ") },
      hint: didYouMean(item, known, "add it to hardware.yaml, with its sizes and its mass"),
    }));
}

/** What a design screws on or holds as if at one place, each with its mass. */
export function hardwareOf({ hardware = [] }: DesignFile, { hardware: items }: HardwareFile): SpecHardware[] {
  return hardware.map(({ id, item, mass, at }) => {
    const known = items.find((one) => one.item === item);
    return { id, item: item ?? null, mass: mass ?? known?.mass ?? 0, at };
  });
}

/** An item of the file of hardware by its name, if it is there. */
export function itemNamed(name: string, { hardware }: HardwareFile): HardwareItem | undefined {
  const found = hardware.find(({ item }) => item === name);
  if (found === undefined) return undefined;
  const { item, kind, length, width, diameter, depth, mass, shaft, thread } = found;
  return {
    ...{ item, kind, depth, mass, shaft: shaft ?? null, thread: thread ?? null },
    body:
      diameter === undefined
        ? { shape: "box", length: length!, width: width! }
        : { shape: "round", diameter },
  };
}
