import { counts } from "./count.ts";
import { type Problem, quoted } from "./problem.ts";
import type { ReadFile } from "./read.ts";
import type { DesignFile } from "./schema/design.ts";
import type { OrderFile } from "./schema/order.ts";

/** What in a design contradicts itself: a list of strings of another length than its count, stations out of order, its name, parts of another build. */
export function designProblems(order: OrderFile, design: ReadFile<DesignFile>): Problem[] {
  const { data, written } = design;
  const lists = counts.flatMap((count): Problem[] => {
    const list = data.strings[count];
    if (list === undefined || list.length === count) return [];
    const what = {
      code: "count",
      position: written.at(["strings", String(count)]),
      name: `strings.${count}`,
    } as const;
    const hint = "list as many strings as the count before it";
    return [{ ...what, found: `a list of ${list.length}`, allowed: `a list of ${count}`, hint }];
  });
  const stations = (["fingerboard", "neck"] as const).flatMap((part) => stationProblems(part, design));
  return [
    ...lists,
    ...stations,
    ...buildProblems(design),
    ...ownName(order.design, design, data.design, "design"),
  ];
}

/** Wings on a body in one piece, or such a body on a winged instrument: only one of them takes the core in. */
function buildProblems({ data, written }: ReadFile<DesignFile>): Problem[] {
  const other = data.build === "winged" ? "body" : "wings";
  if (data[other] === undefined) return [];
  return [
    {
      ...{ code: "contradiction", position: written.at([other]), name: other },
      ...{ found: `${other} in a design whose build is ${data.build}` },
      allowed: data.build === "winged" ? "wings" : "a body",
      hint: `remove ${other}, or change the design's build`,
    },
  ];
}

function stationProblems(
  part: keyof DesignFile["stations"],
  { data, written }: ReadFile<DesignFile>,
): Problem[] {
  const list = data.stations[part];
  return list.flatMap((x, i): Problem[] => {
    const before = i === 0 ? 0 : list[i - 1]!;
    if (Number.isInteger(x) && x > before) return [];
    const position = written.at(["stations", part, i]);
    const allowed = i === 0 ? "a whole number of mm above 0" : `a whole number of mm above ${before}`;
    const hint = "list the stations from the nut on, each once, in whole mm";
    return [{ code: "range", position, name: `stations.${part}`, found: `${x} mm`, allowed, hint }];
  });
}

/** A file that says another name of itself than the one it was found under. */
export function ownName(
  asked: string,
  file: ReadFile<unknown>,
  name: string,
  key: "design" | "shop",
): Problem[] {
  if (asked === name) return [];
  const hint = "give the file and what it says of itself one name";
  const position = file.written.at([key]);
  return [
    {
      code: "contradiction",
      position,
      name: key,
      found: quoted(name),
      allowed: `${asked}, as the file is named`,
      hint,
    },
  ];
}
