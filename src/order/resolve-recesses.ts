import { hasPart } from "./has-part.ts";
import { didYouMean } from "./nearest.ts";
import { partFrames } from "./part-frames.ts";
import { type Checked, type Position, type Problem, quoted } from "./problem.ts";
import type { ReadFile } from "./read.ts";
import type { RecessPart } from "./recess-part.ts";
import { resolveFace, resolveMeasure } from "./resolve-face.ts";
import { itemNamed } from "./resolve-hardware.ts";
import type { DesignFile } from "./schema/design.ts";
import type { HardwareFile } from "./schema/hardware-items.ts";
import type { Measure } from "./schema/measure.ts";
import type { Spec, SpecBore, SpecHeld, SpecRecess, SpecValue } from "./spec.ts";

type Values = { readonly [id: string]: SpecValue };
type Written = NonNullable<DesignFile["recesses"]>;
type WrittenRecess = Written["list"][number];

/** The design's recesses and wires' bores, with their measures worked out to mm, and where they stand in its file. */
export function resolveRecesses(
  design: ReadFile<DesignFile>,
  values: Values,
  hardware: HardwareFile,
): Checked<Pick<Spec, "recesses" | "bores" | "places">> {
  const { data, written } = design;
  const problems: Problem[] = [];
  const places: { [place: string]: Position } = {};
  const { list = [], bores = [] } = data.recesses ?? {};
  const measured: Measured = (measure, side, where) =>
    resolveMeasure(measure, values, side, written, ["recesses", ...where], problems);
  const recesses = list.map((recess, i): SpecRecess => {
    const path = ["list", i];
    places[`recess.${recess.id}`] = written.at(["recesses", ...path]);
    problems.push(...recessProblems(recess, i, design));
    const [along, across] = partFrames[recess.in];
    const there = hasPart(data, recess.in);
    return {
      ...{ id: recess.id, in: recess.in, from: recess.from, turn: recess.turn ?? 0, out: recess.out ?? null },
      cover: recess.cover === "yes",
      at: there
        ? [
            measured(recess.at[0], along, [...path, "at", 0]),
            measured(recess.at[1], across, [...path, "at", 1]),
          ]
        : [0, 0],
      holds: heldBy(recess, i),
    };
  });
  function heldBy({ id, holds }: WrittenRecess, i: number): SpecHeld {
    const path = ["recesses", "list", i, "holds"];
    if (typeof holds === "string") return itemHeld(holds, hardware);
    const face = resolveFace(holds.face, values, written, [...path, "face"], []);
    if (!face.ok) problems.push(...face.problems);
    for (const [k, edge] of holds.face.edges.entries())
      places[`recess.${id}.${edge.id}`] = written.at([...path, "face", "edges", k]);
    const depth = measured(holds.depth, holds.face.frame.along, ["list", i, "holds", "depth"]);
    return face.ok ? { kind: "face", face: face.value, depth } : nothing;
  }
  const led = bores.map(({ id, from, to, size, height, begins }, i): SpecBore => {
    places[`bore.${id}`] = written.at(["recesses", "bores", i]);
    problems.push(...boreProblems({ id, from, to }, i, design));
    const own = (measure: Measure, name: string) => measured(measure, "recess.wall", ["bores", i, name]);
    const over = own(height, "height");
    return {
      ...{ id, from, to, size: own(size, "size"), height: over },
      begins: begins === undefined ? over : own(begins, "begins"),
    };
  });
  problems.push(...heldProblems(recesses, design));
  problems.push(...sizeProblems(led, design));
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, value: { recesses, bores: led, places } };
}

type Measured = (measure: Measure, side: string, where: readonly PropertyKey[]) => number;

/** One that isn't known is told elsewhere. */
function itemHeld(name: string, hardware: HardwareFile): SpecHeld {
  const item = itemNamed(name, hardware);
  return item === undefined ? nothing : { kind: "item", item };
}

const nothing: SpecHeld = {
  kind: "face",
  face: { along: 0, out: 0, edges: [], holes: [] },
  depth: 0,
};

function twice(ids: readonly string[], i: number): boolean {
  return ids.indexOf(ids[i]!) !== i;
}

/** A recess in a part that the design doesn't have, or of a name that another has. */
function recessProblems(
  { id, in: part }: WrittenRecess,
  i: number,
  { data, written }: ReadFile<DesignFile>,
): Problem[] {
  const ids = (data.recesses?.list ?? []).map((one) => one.id);
  const own = hasPart(data, part)
    ? []
    : [
        {
          ...{ code: "contradiction" as const, position: written.at(["recesses", "list", i, "in"]) },
          ...{ name: `recess.${id}`, found: `a recess in ${quoted(part)} of a design without` },
          allowed: ["neck", "body", "wing-bass", "wing-treble"]
            .filter((one) => hasPart(data, one as RecessPart))
            .join(", "),
          hint: "name a part that this design has",
        },
      ];
  const name =
    !twice(ids, i) && id !== "bridge" ? [] : [taken(id, written.at(["recesses", "list", i, "id"]))];
  return [...own, ...name];
}

function taken(id: string, position: Position): Problem {
  return {
    ...{ code: "id", position, name: id, found: quoted(id), allowed: "a name of its own, other than bridge" },
    hint: "choose another name",
  };
}

function boreProblems(
  { id, from, to }: Pick<SpecBore, "id" | "from" | "to">,
  i: number,
  { data, written }: ReadFile<DesignFile>,
): Problem[] {
  const { list = [], bores = [] } = data.recesses ?? {};
  const known = list.map((one) => one.id);
  const path = ["recesses", "bores", i];
  const ends = (["from", "to"] as const).flatMap((end): Problem[] => {
    const name = end === "from" ? from : to;
    const allowed = end === "from" ? ["bridge", ...known] : known;
    const fault = { position: written.at([...path, end]), name: `bore.${id}`, found: quoted(name) };
    if (!allowed.includes(name))
      return [
        {
          ...{ code: "unknown-name", ...fault, allowed: allowed.join(", ") },
          hint: didYouMean(name, allowed, "name a recess of this design"),
        },
      ];
    if (end === "to" && from === to)
      return [
        {
          code: "contradiction",
          ...fault,
          allowed: `another recess than ${from}`,
          hint: "name another recess",
        },
      ];
    return [];
  });
  const ids = bores.map((one) => one.id);
  return [...ends, ...(twice(ids, i) ? [taken(id, written.at([...path, "id"]))] : [])];
}

/** A bore without a diameter. */
function sizeProblems(bores: readonly SpecBore[], { written }: ReadFile<DesignFile>): Problem[] {
  return bores.flatMap(({ id, size }, i): Problem[] => {
    if (size > 0) return [];
    return [
      {
        ...{ code: "range", position: written.at(["recesses", "bores", i, "size"]), name: `bore.${id}` },
        ...{ found: `${size} mm`, allowed: "more than 0 mm", hint: "write a diameter" },
      },
    ];
  });
}

/** A recess whose item goes through a wall must say which way out, and no other. */
function heldProblems(recesses: readonly SpecRecess[], { written }: ReadFile<DesignFile>): Problem[] {
  return recesses.flatMap(({ id, holds, out }, i): Problem[] => {
    const wants = holds.kind === "item" && holds.item.thread !== null;
    if (holds === nothing || wants === (out !== null)) return [];
    const said = holds.kind === "item" ? holds.item.item : "its outline";
    return [
      {
        ...{ code: "contradiction", position: written.at(["recesses", "list", i]), name: `recess.${id}` },
        found: wants ? `no way out for ${said}` : `a way out of a recess for ${said}`,
        allowed: wants ? "out, an angle" : "no out: nothing of it goes through a wall",
        hint: wants ? "add out: 0 deg, or another angle" : "remove out",
      },
    ];
  });
}
