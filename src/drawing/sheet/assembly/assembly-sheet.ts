import type { SeenLines } from "../../../geometry/seen/seen-lines.ts";
import type { View } from "../../../geometry/seen/view.ts";
import { type Box3, boxOfMesh } from "../../../geometry/solid/triangles-in.ts";
import type { Vec3 } from "../../../geometry/solid/vec3.ts";
import { type Annotated, annotated } from "../annotate.ts";
import { boxOf } from "../lettering.ts";
import { stacked } from "../linear.ts";
import { moved } from "../moved.ts";
import { scales } from "../scales.ts";
import { type Marks, type Sheet, together } from "../sheet.ts";
import { emptySheet } from "../sheet-frame.ts";
import { shelved } from "../shelve.ts";
import { named } from "../view-name.ts";
import type { AssemblySheetInput } from "./assembly-input.ts";
import { drawn, playersView, seenOf, views } from "./seen-view.ts";

type Scale = (typeof scales)[number];

/**
 * The sheet of the assembled instrument without its title: front over side in third-angle projection, the tail beside the side, and the view from the
 * player's side, in parallel projection; whole length, width and height, and the string length. On the first of the papers that holds it.
 */
export function assemblySheet(input: AssemblySheetInput): Sheet {
  const edged = input.parts.map((part) => part.edged);
  const box = boxOfAll(input.parts);
  const long = box.most.x - box.least.x;
  const seen = (view: View) => seenOf(edged, view, long);
  const main = { front: seen(views.front), side: seen(views.side), tail: seen(views.tail) };
  const player = seen(playersView(input.hand));
  for (const paper of input.papers) {
    const empty = emptySheet(paper, "");
    for (const scale of scales.filter(({ factor }) => long * factor < empty.frame.maxX)) {
      const first = mainViews(input, main, box, scale);
      if (first.kind !== "ok") continue;
      for (const detail of scales.filter(({ factor }) => factor <= scale.factor && factor >= 0.2)) {
        const words = `FROM THE PLAYER'S SIDE, OVER THE TAIL, PARALLEL PROJECTION  ${detail.text}`;
        const last = namedView({ kind: "ok", marks: drawn(player, detail.factor) }, words);
        const put = shelved([first.marks, last], empty.frame, [empty.titleBox]);
        if (put.kind === "ok") return { ...emptySheet(paper, scale.text), ...together(put.views), notes };
      }
    }
  }
  throw new RangeError("the assembly's sheet has room on no paper");
}

/** What stands in the title's block of a sheet of the assembled instrument. */
export const notes = [
  "STRINGS, TUNERS AND THE TAILPIECE'S POSTS ARE NOT DRAWN",
  "FOR LOOKING AT: EVERY PART IS MADE TO ITS OWN DRAWING",
] as const;

/** The extents of all parts, mm. */
function boxOfAll(parts: AssemblySheetInput["parts"]): Box3 {
  const boxes = parts.map(({ edged }) => boxOfMesh(edged.mesh));
  const take = (pick: (...values: number[]) => number, end: keyof Box3): Vec3 => {
    const of = (k: "x" | "y" | "z") => pick(...boxes.map((box) => box[end][k]));
    return { x: of("x"), y: of("y"), z: of("z") };
  };
  return { least: take(Math.min, "least"), most: take(Math.max, "most") };
}

type MainViews = { readonly front: SeenLines; readonly side: SeenLines; readonly tail: SeenLines };

function mainViews(
  input: AssemblySheetInput,
  seen: MainViews,
  box: Box3,
  { factor, text }: Scale,
): Annotated {
  const front = annotated(drawn(seen.front, factor), frontDimensions(input, box, factor));
  const side = annotated(drawn(seen.side, factor), [heightOver(box, factor)]);
  if (front.kind !== "ok") return front;
  if (side.kind !== "ok") return side;
  const seenFrom = input.hand === "right" ? "BASS" : "TREBLE";
  const over = namedView(front, `FRONT  ${text}`);
  const beside = { kind: "ok", marks: drawn(seen.tail, factor) } as const;
  const under = namedView(side, `SIDE FROM THE ${seenFrom} SIDE  ${text}`);
  const down = boxOf(over).minY - 6 - boxOf(under).maxY;
  const tail = namedView(beside, `FROM THE TAIL  ${text}`);
  const right = boxOf(under).maxX + 10 - boxOf(tail).minX;
  return { kind: "ok", marks: together([over, moved(under, 0, down), moved(tail, right, down)]) };
}

function namedView(view: Extract<Annotated, { kind: "ok" }>, words: string): Marks {
  const { minX, maxX } = boxOf(view.marks);
  const with1 = named(view, words, "", minX, maxX);
  return with1.kind === "ok" ? with1.marks : view.marks;
}

function frontDimensions({ stringLength }: AssemblySheetInput, { least, most }: Box3, scale: number) {
  const whole = { from: { x: least.x, y: 0 }, to: { x: most.x, y: 0 } };
  const strings = { from: { x: 0, y: 0 }, to: { x: stringLength.value, y: 0 } };
  const wide = { from: { x: most.x, y: least.y }, to: { x: most.x, y: most.y } };
  const over = most.y * scale;
  const long = { name: "string length", along: "x", ...strings, prefix: "STRING LENGTH " } as const;
  return [
    stacked({ ...long, tolerance: stringLength.tolerance }, scale, over, 1),
    stacked({ name: "whole length", along: "x", ...whole }, scale, over, 1),
    stacked({ name: "whole width", along: "y", ...wide }, scale, most.x * scale, 1),
  ];
}

function heightOver({ least, most }: Box3, scale: number) {
  const high = { from: { x: most.x, y: least.z }, to: { x: most.x, y: most.z } };
  return stacked({ name: "height over all", along: "y", ...high }, scale, most.x * scale, 1);
}
