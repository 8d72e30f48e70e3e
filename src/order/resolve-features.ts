import { bodyEdges } from "./body-edge.ts";
import { type Checked, type Position, type Problem, quoted } from "./problem.ts";
import type { ReadFile } from "./read.ts";
import { resolveFace, resolveMeasure } from "./resolve-face.ts";
import type { DesignFile } from "./schema/design.ts";
import type { WrittenFace } from "./schema/face.ts";
import type { Measure } from "./schema/measure.ts";
import type { OrderFile } from "./schema/order.ts";
import type { Side } from "./side.ts";
import type { Spec, SpecBody, SpecFace, SpecFoot, SpecInlay, SpecValue, SpecWing } from "./spec.ts";

type Values = { readonly [id: string]: SpecValue };
type Features = Pick<
  Spec,
  "surface" | "dots" | "inlays" | "bridgeFace" | "bridgeFoot" | "tailpieceFace" | "wings" | "body" | "places"
>;

/** Where frets are usually marked. */
const usualDots = [3, 5, 7, 9, 12, 15, 17, 19, 21, 24];

/** The design's faces and features, with their measures worked out to mm; problems stand in the design's file. */
export function resolveFeatures(design: ReadFile<DesignFile>, values: Values): Checked<Features> {
  const { data, written } = design;
  const problems: Problem[] = [];
  const places: { [place: string]: Position } = {};
  const faceOf = (
    face: WrittenFace,
    path: readonly PropertyKey[],
    part: string,
    curves: readonly string[],
  ) => {
    for (const [i, { id }] of face.edges.entries())
      places[`${part}.${id}`] = written.at([...path, "edges", i]);
    for (const [i, { id }] of (face.holes ?? []).entries())
      places[`${part}.${id}`] = written.at([...path, "holes", i]);
    const found = resolveFace(face, values, written, path, curves);
    if (!found.ok) problems.push(...found.problems);
    return found.ok ? found.value : noFace;
  };
  const bridgeFace = faceOf(data.bridge.face, ["bridge", "face"], "bridge", ["bridge.crown"]);
  const tailpieceFace = faceOf(data.tailpiece.face, ["tailpiece", "face"], "tailpiece", ["tailpiece.front"]);
  const inlays = (data.inlays?.list ?? []).map(({ id, at, face }, i): SpecInlay => {
    const path = ["inlays", "list", i];
    const x = resolveMeasure(at.x, values, "fingerboard.length", written, [...path, "at", "x"], problems);
    places[`inlay.${id}`] = written.at(path);
    return {
      ...{ id, at: { x, y: at.y } },
      face: faceOf(face, [...path, "face"], `inlay.${id}`, []),
    };
  });
  const bridgeFoot = footOf(data.bridge.foot, faceOf);
  const wingOf = (side: Side, { face, profile, pins }: Wing): SpecWing => {
    const path = ["wings", side];
    const measured = (measure: Measure, along: string, where: readonly PropertyKey[]) =>
      resolveMeasure(measure, values, `wing.${side}.${along}`, written, [...path, ...where], problems);
    return {
      ...{ profile, face: faceOf(face, [...path, "face"], `wing-${side}`, []) },
      pins: pins.map(({ id, at: [along, down] }, i) => {
        places[`wing-${side}.${id}`] = written.at([...path, "pins", i]);
        const place = ["pins", i, "at"];
        return {
          id,
          at: [measured(along, "length", [...place, 0]), measured(down, "thickness", [...place, 1])],
        };
      }),
    };
  };
  const { wings: own } = data;
  const wings = own ? { bass: wingOf("bass", own.bass), treble: wingOf("treble", own.treble) } : null;
  return problems.length > 0
    ? { ok: false, problems }
    : {
        ok: true,
        value: {
          ...{ surface: data.fingerboard.surface, dots: dotsOf(data), inlays },
          ...{ bridgeFace, bridgeFoot, tailpieceFace, places, wings },
          body: bodyOf(data),
        },
      };
}

type Wing = NonNullable<DesignFile["wings"]>[Side];

const noFace: SpecFace = { along: 0, out: 0, edges: [], holes: [] };

type FaceOf = (
  face: WrittenFace,
  path: readonly PropertyKey[],
  part: string,
  curves: readonly string[],
) => SpecFace;

function footOf(foot: DesignFile["bridge"]["foot"], faceOf: FaceOf): SpecFoot {
  if (foot === "standing") return { kind: "standing" };
  if ("cradle" in foot) {
    return {
      kind: "cradle",
      face: faceOf(foot.cradle.face, ["bridge", "foot", "cradle", "face"], "cradle", []),
    };
  }
  // A saddle's screws are places in a frame as large as its foot; it has no edges of its own.
  const frame = { along: "bridge.foot.width", out: "bridge.foot.thickness" };
  const face = { frame, edges: [], holes: foot.saddle.screws };
  return { kind: "saddle", screws: faceOf(face, ["bridge", "foot", "saddle"], "saddle", []).holes };
}

function bodyOf({ body }: DesignFile): SpecBody | null {
  if (body === undefined) return null;
  const { core, corners, profile, cut } = body;
  return {
    ...{ core: core === "through" ? core : "recess", corners: corners === "none" ? corners : "four" },
    ...{ profile, cut: bodyEdges.filter((edge) => cut === "all" || cut.includes(edge)) },
  };
}

function dotsOf({ dots, "side-dots": side }: DesignFile): Spec["dots"] {
  const list = (at: "usual" | readonly number[] | undefined) => (at === "usual" ? usualDots : (at ?? []));
  return { face: list(dots?.at), side: list(side?.at) };
}

/** The frets that an order asks for, where its design offers so many. */
export function resolveFrets(
  { data, written }: ReadFile<OrderFile>,
  { data: design }: ReadFile<DesignFile>,
): Checked<Spec["frets"]> {
  if (data.frets === "none") return { ok: true, value: null };
  const { count } = data.frets;
  const position = written.at(["frets"]);
  const offered = design.frets;
  if (offered !== undefined && count <= offered.most)
    return { ok: true, value: { count, slots: offered.slots, position } };
  const allowed =
    offered === undefined
      ? `none: design ${quoted(data.design)} is fretless`
      : `1 to ${offered.most} in design ${quoted(data.design)}`;
  const hint = offered === undefined ? "frets: none, or another design" : `frets: { count: ${offered.most} }`;
  return {
    ok: false,
    problems: [{ code: "contradiction", position, name: "frets", found: `${count} frets`, allowed, hint }],
  };
}
