import { describe, expect, it } from "vitest";
import { annotated } from "../../src/drawing/sheet/annotate.ts";
import { partLabel } from "../../src/drawing/sheet/assembly/part-label.ts";
import { leader } from "../../src/drawing/sheet/leader.ts";
import { textBox } from "../../src/drawing/sheet/lettering.ts";
import type { Marks } from "../../src/drawing/sheet/sheet.ts";
import { rectangle } from "../../src/geometry/rectangle.ts";

type Place = { readonly x: number; readonly y: number };
type Area = readonly [minX: number, minY: number, maxX: number, maxY: number];

/** Parts as areas, the first that holds a place being what is seen there. */
function view(areas: readonly Area[]) {
  const seenAt = ({ x, y }: Place) => {
    const own = areas.findIndex(([x1, y1, x2, y2]) => x > x1 && x < x2 && y > y1 && y < y2);
    return own < 0 ? null : own;
  };
  const lines = areas.map((area) => ({ weight: "edge" as const, path: rectangle(...area) }));
  return { seenAt, marks: { lines, texts: [] } };
}

/** Which areas a name's leader and words lie over, looked at every tenth of a millimetre along straight lines. */
function under({ lines, texts }: Marks, areas: readonly Area[]): number[] {
  const straight = [
    ...lines
      .filter(({ weight }) => weight === "dimension")
      .map(({ path }) => [path.points[0]!, path.points[1]!] as const),
    ...texts.map((text) => {
      const { minX, minY, maxX, maxY } = textBox(text);
      return [
        { x: minX, y: (minY + maxY) / 2 },
        { x: maxX, y: (minY + maxY) / 2 },
      ] as const;
    }),
  ];
  const places = straight.flatMap(([a, b]) =>
    Array.from({ length: 501 }, (_, i) => ({
      x: a.x + ((b.x - a.x) * i) / 500,
      y: a.y + ((b.y - a.y) * i) / 500,
    })),
  );
  return areas.flatMap(([x1, y1, x2, y2], i) =>
    places.some(({ x, y }) => x > x1 && x < x2 && y > y1 && y < y2) ? [i] : [],
  );
}

/** What is drawn beside the parts: the name and its leader. */
function drawnBeside(areas: readonly Area[], label: ReturnType<typeof partLabel>): Marks {
  const { marks } = view(areas);
  const made = annotated(marks, [label]);
  if (made.kind !== "ok") throw new Error(made.name);
  return { lines: made.marks.lines.slice(areas.length), texts: made.marks.texts };
}

const cover: Area = [0, 0, 20, 10];
const at = { x: 10, y: 5 };
/** A wing over the cover, right in the way of the first direction, 60 degrees. */
const wing: Area = [-60, 12, 80, 60];

describe("the name of a part that is drawn apart", () => {
  const label = (areas: readonly Area[], text = "COVER, BATTERY") =>
    partLabel({ text, at, own: 0, seenAt: view(areas).seenAt });

  it("leads over no other part where there is a way, though a shorter one runs over one", () => {
    const areas = [cover, wing];
    expect(under(drawnBeside(areas, label(areas)), areas)).toEqual([0]);
    const first = leader({ text: "COVER, BATTERY", at: () => at, directions: [60, 120, 30, 150] });
    expect(under(drawnBeside(areas, first), areas)).toContain(1);
  });

  it("leads over as few as can be had where it is shut in", () => {
    const shut: Area[] = [cover, wing, [-40, -80, 80, -4], [-200, -100, -10, 100], [30, -100, 200, 100]];
    const over = under(drawnBeside(shut, label(shut)), shut).filter((part) => part !== 0);
    expect(over).toHaveLength(1);
  });

  it("is as near as it goes, and the same each time", () => {
    const made = drawnBeside([cover], label([cover]));
    const box = textBox(made.texts[0]!);
    expect(Math.hypot(box.minX - at.x, box.minY - at.y)).toBeLessThan(40);
    expect(drawnBeside([cover], label([cover]))).toEqual(made);
  });
});
