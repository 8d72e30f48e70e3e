import { strFromU8, unzipSync } from "fflate";
import type { Surface } from "./surface.ts";

/**
 * The pieces of a 3MF read back, as far as its own writer's kind goes: plain meshes, in millimetres, each built once where
 * it stands. Or what is wrong: no zip, no model in it, another unit, a number or an index that is none, a piece that isn't
 * built just once.
 */
export type ThreemfRead =
  | { readonly kind: "ok"; readonly pieces: readonly { readonly name: string; readonly surface: Surface }[] }
  | {
      readonly kind: "bad";
      readonly problem: "zip" | "no-model" | "unit" | "not-finite" | "index" | "build";
    };

/** Reads a 3MF. Vertices stay as they are given: two at one place are two. */
export function threemfRead(bytes: Uint8Array): ThreemfRead {
  const bad = (problem: Extract<ThreemfRead, { kind: "bad" }>["problem"]): ThreemfRead => ({
    kind: "bad",
    problem,
  });
  let files: Record<string, Uint8Array>;
  try {
    files = unzipSync(bytes);
  } catch {
    return bad("zip");
  }
  const target = /Target="\/([^"]+)"/.exec(text(files["_rels/.rels"]))?.[1] ?? "";
  const model = text(files[target]);
  if (model === "") return bad("no-model");
  if (attribute(/<model\b[^>]*>/.exec(model)?.[0] ?? "", "unit") !== "millimeter") return bad("unit");
  const pieces: { name: string; surface: Surface }[] = [];
  const built = [...model.matchAll(/<item\b[^>]*>/g)].map(([tag]) => attribute(tag, "objectid"));
  for (const [, head, body] of model.matchAll(/<object\b([^>]*)>([\s\S]*?)<\/object>/g)) {
    if (built.filter((id) => id === attribute(head!, "id")).length !== 1) return bad("build");
    const vertices = numbers(body!, /<vertex\b[^>]*>/g, ["x", "y", "z"]);
    const corners = numbers(body!, /<triangle\b[^>]*>/g, ["v1", "v2", "v3"]);
    if (!vertices.every(Number.isFinite)) return bad("not-finite");
    if (!corners.every((i) => Number.isInteger(i) && i >= 0 && i < vertices.length / 3)) return bad("index");
    pieces.push({ name: plain(attribute(head!, "name")), surface: { vertices, corners } });
  }
  return pieces.length === built.length ? { kind: "ok", pieces } : bad("build");
}

function text(bytes: Uint8Array | undefined): string {
  return bytes === undefined ? "" : strFromU8(bytes);
}

function attribute(tag: string, name: string): string {
  return new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1] ?? "";
}

/** The numbers of certain attributes of every tag of a kind; NaN where one is missing. */
function numbers(body: string, tags: RegExp, names: readonly string[]): number[] {
  const found: number[] = [];
  // Most files have the attributes in just this order, which is read at a fraction of the cost.
  const plainly = new RegExp(`^<\\w+ ${names.map((name) => `${name}="([^"]*)"`).join(" ")}\\s*/>$`);
  for (const [tag] of body.matchAll(tags)) {
    const values = plainly.exec(tag);
    if (values !== null) {
      for (let i = 1; i < values.length; i++) found.push(values[i] === "" ? Number.NaN : Number(values[i]));
      continue;
    }
    // Names and values by turns; split at the quotes, which is many times quicker than looking for each name.
    const parts = tag.split('"');
    for (const name of names) {
      const at = parts.findIndex(
        (part, i) => i % 2 === 0 && part.endsWith(`${name}=`) && /\s/.test(part.at(-name.length - 2) ?? ""),
      );
      const value = at < 0 ? "" : (parts[at + 1] ?? "");
      found.push(value === "" ? Number.NaN : Number(value));
    }
  }
  return found;
}

function plain(value: string): string {
  return value.replace(/&#(\d+);/g, (_, code) => String.fromCodePoint(Number(code)));
}
