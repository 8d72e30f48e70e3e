import { hasPart } from "./has-part.ts";
import { partFrames } from "./part-frames.ts";
import { type Checked, type Position, type Problem, quoted } from "./problem.ts";
import type { ReadFile } from "./read.ts";
import { type RecessPart, recessParts } from "./recess-part.ts";
import { resolveFace, resolveMeasure } from "./resolve-face.ts";
import type { DesignFile } from "./schema/design.ts";
import type { Spec, SpecValue } from "./spec.ts";
import type { SpecChinRest, SpecMount, SpecRests } from "./spec-rests.ts";

type Values = { readonly [id: string]: SpecValue };

/** The design's rests and mounts, with their measures worked out to mm, and where they stand in its file. */
export function resolveRests(
  design: ReadFile<DesignFile>,
  values: Values,
): Checked<{ readonly rests: SpecRests; readonly places: Spec["places"] }> {
  const { data, written } = design;
  const problems: Problem[] = voiceProblems(design);
  const places: { [place: string]: Position } = {};
  const { chin, shoulder, knee, endpin } = data.rests ?? {};
  const on = (part: RecessPart, path: readonly PropertyKey[], name: string): boolean => {
    const there = hasPart(data, part);
    if (!there) problems.push(noPart(data, part, written.at(path), name));
    return there;
  };
  const chinRest = (): SpecChinRest | null => {
    if (chin === undefined) return null;
    const path = ["rests", "chin"];
    places["rest.chin"] = written.at(path);
    if (!on(chin.on, [...path, "on"], "rest.chin")) return null;
    const screws = "screws" in chin.hold ? chin.hold.screws.holes : [];
    const face = resolveFace({ ...chin.face, holes: screws }, values, written, [...path, "face"], []);
    if (!face.ok) problems.push(...face.problems);
    const hold = "clamp" in chin.hold ? "clamp" : "screws";
    return face.ok ? { on: chin.on, face: face.value, hold } : null;
  };
  const mounts = (["shoulder", "knee"] as const).flatMap((kind) => {
    const list = (kind === "shoulder" ? shoulder : knee)?.list ?? [];
    return list.flatMap(({ id, in: part, at, turn }, i): SpecMount[] => {
      const path = ["rests", kind, "list", i];
      const name = `rest.${kind}.${id}`;
      if (places[name] !== undefined) problems.push(taken(id, written.at([...path, "id"]), name));
      places[name] = written.at(path);
      if (!on(part, [...path, "in"], name)) return [];
      const measured = (k: 0 | 1) =>
        resolveMeasure(at[k], values, partFrames[part][k], written, [...path, "at", k], problems);
      return [{ kind, id, in: part, at: [measured(0), measured(1)], turn: turn ?? 0 }];
    });
  });
  const rests = { chin: chinRest(), mounts, endpin: endpin !== undefined };
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: { rests, places } };
}

function noPart(data: DesignFile, part: RecessPart, position: Position, name: string): Problem {
  return {
    ...{ code: "contradiction", position, name, found: `${quoted(part)} of a design without` },
    allowed: recessParts.filter((one) => hasPart(data, one)).join(", "),
    hint: "name a part that this design has",
  };
}

function taken(id: string, position: Position, name: string): Problem {
  const hint = "choose another name";
  return { code: "id", position, name, found: quoted(id), allowed: "a name of its own", hint };
}

/** A cello stands on an endpin, between the knees; a violin or viola lies under the chin, on the shoulder. */
function voiceProblems({ data, written }: ReadFile<DesignFile>): Problem[] {
  const cello = data.voice === "cello";
  const wrong = (cello ? ["chin", "shoulder"] : ["knee", "endpin"]) as (
    | "chin"
    | "shoulder"
    | "knee"
    | "endpin"
  )[];
  return wrong.flatMap((rest): Problem[] => {
    if (data.rests?.[rest] === undefined) return [];
    return [
      {
        ...{ code: "contradiction", position: written.at(["rests", rest]), name: `rests.${rest}` },
        found: `${rest} in a design whose voice is ${data.voice}`,
        allowed: cello ? "knee, endpin" : "chin, shoulder",
        hint: `remove rests.${rest}`,
      },
    ];
  });
}
