import { meshEdges } from "../../../geometry/seen/mesh-edges.ts";
import type { TriangleMesh } from "../../../geometry/solid/triangle-mesh.ts";
import type { Vec3 } from "../../../geometry/solid/vec3.ts";
import { dimensionOf, type Spec } from "../../../order/spec.ts";
import { hashOf } from "../../../step/key.ts";
import { lazy } from "../../../step/lazy.ts";
import type { Model } from "../../../workshop/model.ts";
import { papersOf } from "../papers.ts";
import type { Sheet } from "../sheet.ts";
import type { SheetFile } from "../sheets.ts";
import { apartSheet } from "./apart-sheet.ts";
import type { AssemblySheetInput } from "./assembly-input.ts";
import { assemblySheet } from "./assembly-sheet.ts";

/** A part of the assembled instrument as it is written: its name, its key, and its mesh as the hand of the order has it. */
export type AssembledPart = { readonly name: string; readonly key: string; readonly mesh: TriangleMesh };

/** How far parts are drawn apart, as a share of the string length: to the front, to either side, to the back, and covers off their face. */
const away = { front: 0.16, nut: 0.1, bridge: 0.2, side: 0.14, back: 0.3, cover: 0.14 } as const;

/**
 * The sheets of the assembled instrument, drawn from its parts' meshes. No step works them out, since meshes are no input to take a key of: their keys
 * follow from the parts' own.
 */
export function assemblySheets(model: Model, parts: readonly AssembledPart[]): readonly SheetFile[] {
  const { spec } = model;
  const stringLength = {
    value: dimensionOf(spec, "string.length"),
    tolerance: spec.values["string.length"]!.tolerance,
  };
  const plain = { hand: spec.hand, papers: papersOf(spec.shop.paper), stringLength };
  // Nothing is drawn of a sheet whose files are kept.
  const made = lazy<{ readonly input: AssemblySheetInput }>({
    input: () => ({
      ...plain,
      parts: parts.map(({ name, mesh }) => {
        return { name, edged: meshEdges(mesh), apart: apartOf(name, stringLength.value, spec) };
      }),
    }),
  });
  const keys = parts.map(({ key }) => key).join("\n");
  const sheet = (name: string, version: number, what: string, draw: (input: AssemblySheetInput) => Sheet) => {
    return {
      ...({ name, folder: "bench", part: "assembly", what, seenFrom: "front", shows: ["assembly"] } as const),
      of: () =>
        lazy({
          key: () => hashOf(`sheet.${name} ${version}\n${JSON.stringify(plain)}\n${keys}`),
          value: () => draw(made.input),
        }),
    };
  };
  return [
    sheet(
      ...(["assembly", 1] as const),
      "sheet of the assembled instrument: front, side, tail, and from the player's side",
      assemblySheet,
    ),
    sheet("assembly-apart", 3, "sheet of the instrument's parts drawn apart along their joints", apartSheet),
  ];
}

function apartOf(name: string, unit: number, spec: Spec): Vec3 {
  const { hand, recesses } = spec;
  const covered = recesses.find(({ id }) => name === `cover-${id}`);
  if (covered !== undefined) {
    // A cover goes where its part goes, and off the face that it closes.
    const { x, y, z } = apartOf(covered.in, unit, spec);
    return { x, y, z: z + (covered.from === "front" ? 1 : -1) * away.cover * unit };
  }
  const treble = hand === "right" ? 1 : -1;
  const to = (x: number, y: number, z: number): Vec3 => ({ x: x * unit, y: y * unit, z: z * unit });
  switch (name) {
    case "fingerboard":
    case "tailpiece":
      return to(0, 0, away.front);
    case "nut":
      return to(0, 0, away.nut);
    case "bridge":
      return to(0, 0, away.bridge);
    case "wing-treble":
      return to(0, treble * away.side, 0);
    case "wing-bass":
      return to(0, -treble * away.side, 0);
    case "body":
      return to(0, 0, -away.back);
    default:
      return to(0, 0, 0);
  }
}
