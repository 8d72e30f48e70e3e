import type { Annotated, Annotation } from "./annotate.ts";
import { baseFromMiddle, boxOf, lettering } from "./lettering.ts";
import type { Marks, SheetText } from "./sheet.ts";
import { corridor, stroke } from "./strokes.ts";

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

/** A word over a view at a place, on a shelf at the end of a thin line out of it, as near as is clear. */
export function pointedAt(text: string, x: number, edge: number): Annotation {
  return {
    name: text,
    keep: [corridor({ x, y: edge }, { x, y: edge + 10 })],
    ways: function* (): Iterable<Marks> {
      for (let out = 4; out < 50; out += 2) {
        for (const side of [-1, 1] as const) {
          for (const aside of [0, -3, 3, -6, 6]) {
            const elbow = { x: x + aside, y: edge + out };
            const end = { x: elbow.x + side * 2, y: elbow.y };
            const { height } = lettering;
            const place = { x: end.x + side * 0.8, y: elbow.y + baseFromMiddle(height) };
            yield {
              lines: [stroke("extension", { x, y: edge + 1 }, elbow), stroke("extension", elbow, end)],
              texts: [{ text, ...place, height, turn: 0, align: side === 1 ? "left" : "right" }],
            };
          }
        }
      }
    },
  };
}
