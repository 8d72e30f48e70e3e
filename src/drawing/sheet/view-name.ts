import type { Annotated, Annotation } from "./annotate.ts";
import { boxOf, lettering } from "./lettering.ts";
import type { Marks, SheetText } from "./sheet.ts";
import { stroke } from "./strokes.ts";

/** A view with its name, and a second line where there is one, under it in the middle of `from` to `to` (mm on paper). */
export function named(view: Annotated, name: string, more: string, from: number, to: number): Annotated {
  if (view.kind !== "ok") return view;
  const { lines, texts } = view.marks;
  const { minY } = boxOf(view.marks);
  const line = (text: string, height: number, y: number): SheetText => {
    return { text, x: (from + to) / 2, y, height, turn: 0, align: "center" };
  };
  const first = line(name, lettering.title, minY - 6.5);
  const second = more === "" ? [] : [line(more, lettering.height, minY - 12)];
  return { kind: "ok", marks: { lines, texts: [...texts, first, ...second] } };
}

/** A word over a view at a place, on a thin line out of it, which may lean: read upward, as near as is clear. */
export function pointedAt(text: string, x: number, edge: number): Annotation {
  return {
    name: text,
    ways: function* (): Iterable<Marks> {
      for (let out = 4; out < 90; out += 2) {
        for (const aside of [0, -4, 4, -7, 7, -10, 10]) {
          const [from, to] = [
            { x, y: edge + 1 },
            { x: x + aside, y: edge + out },
          ];
          yield {
            lines: [stroke("extension", from, to)],
            texts: [uprightOver(text, to.x, to.y + 1)],
          };
        }
      }
    },
  };
}

function uprightOver(text: string, x: number, y: number): SheetText {
  const { height } = lettering;
  const flat = { text, x: 0, y: 0, height, turn: 90, align: "left" } as const;
  const { minX, maxX } = boxOf({ lines: [], texts: [flat] });
  return { ...flat, x: x - (minX + maxX) / 2, y };
}
