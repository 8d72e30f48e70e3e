import type { DesignFile } from "./schema/design.ts";
import type { WrittenDimension } from "./schema/dimension.ts";

/** A dimension as the design writes it, and the way to it in the design's file. */
export type DesignForm = { readonly form: WrittenDimension; readonly path: readonly string[] };

/**
 * Every dimension that an instrument of a design has, by id: what all have, then those of the features that the design has,
 * which stand beside the feature. With frets, what frets change stands in place of the design's own.
 */
export function designForms(design: DesignFile, fretted: boolean): ReadonlyMap<string, DesignForm> {
  const { foot } = design.bridge;
  const { body } = design;
  const features = {
    frets: fretted ? design.frets : undefined,
    dots: design.dots,
    "side-dots": design["side-dots"],
    inlays: design.inlays,
    "wings.bass": design.wings?.bass,
    "wings.treble": design.wings?.treble,
    body,
    recesses: design.recesses,
    "body.core.recess": typeof body?.core === "object" ? body.core.recess : undefined,
    "body.corners.four": typeof body?.corners === "object" ? body.corners.four : undefined,
    "rests.chin": design.rests?.chin,
    "rests.chin.hold.clamp": holdOf(design, "clamp"),
    "rests.chin.hold.screws": holdOf(design, "screws"),
    "rests.shoulder": design.rests?.shoulder,
    "rests.knee": design.rests?.knee,
    "rests.endpin": design.rests?.endpin,
    "bridge.foot.cradle": typeof foot === "object" && "cradle" in foot ? foot.cradle : undefined,
    "bridge.foot.saddle": typeof foot === "object" && "saddle" in foot ? foot.saddle : undefined,
  };
  const forms = new Map<string, DesignForm>();
  const add = (dimensions: { readonly [id: string]: unknown }, path: readonly string[]) => {
    for (const [id, form] of Object.entries(dimensions))
      if (form !== undefined) forms.set(id, { form: form as WrittenDimension, path: [...path, id] });
  };
  add(design.dimensions, ["dimensions"]);
  for (const [name, feature] of Object.entries(features))
    if (feature !== undefined) add(feature.dimensions, [...name.split("."), "dimensions"]);
  return forms;
}

/** What holds the design's chin rest, if it is held that way. */
function holdOf({ rests }: DesignFile, way: "clamp" | "screws") {
  const hold = rests?.chin?.hold;
  if (hold === undefined) return undefined;
  if (way === "clamp") return "clamp" in hold ? hold.clamp : undefined;
  return "screws" in hold ? hold.screws : undefined;
}
