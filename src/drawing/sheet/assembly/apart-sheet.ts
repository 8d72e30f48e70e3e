import { extentsOf } from "../../../geometry/measure.ts";
import type { Point } from "../../../geometry/point.ts";
import type { Edged } from "../../../geometry/seen/mesh-edges.ts";
import type { View } from "../../../geometry/seen/view.ts";
import { viewFrom } from "../../../geometry/seen/view.ts";
import { dot } from "../../../geometry/solid/vec3.ts";
import { annotated } from "../annotate.ts";
import { scales } from "../scales.ts";
import { type Sheet, together } from "../sheet.ts";
import { emptySheet } from "../sheet-frame.ts";
import { shelved } from "../shelve.ts";
import { named } from "../view-name.ts";
import type { AssemblySheetInput, DrawnPart } from "./assembly-input.ts";
import { notes } from "./assembly-sheet.ts";
import { partLabel } from "./part-label.ts";
import { drawn, seenOf } from "./seen-view.ts";

/**
 * The sheet of the instrument's parts drawn apart along their joints, without its title: in parallel projection from over the tail, each part with
 * its name; what is hidden behind others is named under the view. On the first of the papers that holds it, as large as it goes.
 */
export function apartSheet({ hand, papers, parts }: AssemblySheetInput): Sheet {
  const view = viewFrom({ x: 0.45, y: hand === "right" ? -0.5 : 0.5, z: 0.74 }, { x: 0, y: 0, z: 1 });
  const moved = parts.map((part) => ({ ...part, edged: drawnApart(part) }));
  const long = extentOf(moved[0]!.edged, view);
  const seen = seenOf(
    moved.map(({ edged }) => edged),
    view,
    long,
  );
  const midst = seen.midst();
  const hidden = moved.filter((_, i) => midst[i] === null).map(({ name }) => wordsOf(name));
  const more = hidden.length === 0 ? "" : `NOT SEEN FROM HERE: ${hidden.join("; ")}`;
  const box = extentsOf([...seen.outline, ...seen.corners])!;
  for (const paper of papers) {
    const empty = emptySheet(paper, "");
    for (const { text, factor } of scales) {
      const { frame } = empty;
      const room = { wide: frame.maxX - frame.minX, high: frame.maxY - frame.minY };
      const [wide, high] = [(box.maxX - box.minX) * factor, (box.maxY - box.minY) * factor];
      if (wide > room.wide || high > room.high) continue;
      const tags = moved.flatMap((part, i) => {
        const at = midst[i];
        // Nothing points at what isn't seen: it is named under the view.
        if (at === null || at === undefined) return [];
        const point = { x: at.x * factor, y: at.y * factor };
        const seenAt = (place: Point) => seen.at({ x: place.x / factor, y: place.y / factor });
        return [partLabel({ text: wordsOf(part.name), at: point, own: i, seenAt })];
      });
      const whole = annotated(drawn(seen, factor), tags);
      const words = `PARTS DRAWN APART ALONG THEIR JOINTS, FROM OVER THE TAIL, PARALLEL PROJECTION  ${text}`;
      const view1 = named(whole, words, more, box.minX * factor, box.maxX * factor);
      if (view1.kind !== "ok") continue;
      const put = shelved([view1.marks], empty.frame, [empty.titleBox]);
      if (put.kind === "ok") return { ...emptySheet(paper, text), ...together(put.views), notes };
    }
  }
  throw new RangeError("the sheet of the parts drawn apart has room on no paper");
}

function wordsOf(name: string): string {
  return name.toUpperCase().replace("-", ", ");
}

function drawnApart({ edged, apart }: DrawnPart): Edged {
  const { positions, triangles } = edged.mesh;
  const by = [apart.x, apart.y, apart.z];
  const moved = Float64Array.from(positions, (value, i) => value + by[i % 3]!);
  return { ...edged, mesh: { positions: moved, triangles } };
}

/** How long a part is in a view. */
function extentOf({ mesh: { positions } }: Edged, { right, up }: View): number {
  let [low, high, under, over] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < positions.length; i += 3) {
    const place = { x: positions[i]!, y: positions[i + 1]!, z: positions[i + 2]! };
    const [x, y] = [dot(place, right), dot(place, up)];
    [low, high, under, over] = [Math.min(low, x), Math.max(high, x), Math.min(under, y), Math.max(over, y)];
  }
  return Math.hypot(high - low, over - under);
}
