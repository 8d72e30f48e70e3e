import type { MarkGroup, Page } from "../../src/drawing/tiles/tile-page.ts";

type Place = readonly [x: number, y: number];
type Box = readonly [x1: number, y1: number, x2: number, y2: number];
type Points = MarkGroup["marks"]["lines"][number]["path"];

/** The box of a text, from its own type: 0.6 of a size wide whose capitals are 0.64 of it high. */
function boxOf({ marks, shift }: MarkGroup, i: number): Box {
  const { text, x, y, height, turn, align } = marks.texts[i]!;
  const long = ([...text].length * 0.6 * height) / 0.64;
  const start = { left: 0, center: -long / 2, right: -long }[align];
  const [px, py] = [x + shift.x, y + shift.y];
  return turn === 0
    ? [px + start, py, px + start + long, py + height]
    : [px - height, py + start, px, py + start + long];
}

/** Places along a line or an arc, half a millimetre apart or less. */
function placesOn({ points, closed }: Points): Place[] {
  return points.slice(0, closed ? points.length : -1).flatMap((from, i): Place[] => {
    const to = points[(i + 1) % points.length]!;
    const half = 2 * Math.atan(from.bulge);
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    const long = half === 0 ? chord : (chord * half) / Math.sin(half);
    const count = Math.max(1, Math.ceil(long / 0.5));
    const lean = Math.atan2(to.y - from.y, to.x - from.x);
    return Array.from({ length: count + 1 }, (_, k): Place => {
      const share = k / count;
      const reach = half === 0 ? chord * share : (chord * Math.sin(half * share)) / Math.sin(half);
      const toward = lean - half + half * share;
      return [from.x + reach * Math.cos(toward), from.y + reach * Math.sin(toward)];
    });
  });
}

const seenIn = ({ clip }: MarkGroup, [x, y]: Place) =>
  clip === null || (x >= clip.minX && x <= clip.maxX && y >= clip.minY && y <= clip.maxY);

/** The places of a group's lines that are seen on the page. */
function drawnBy(group: MarkGroup): Place[] {
  return group.marks.lines
    .flatMap(({ path }) => placesOn(path))
    .map(([x, y]): Place => [x + group.shift.x, y + group.shift.y])
    .filter((place) => seenIn(group, place));
}

/**
 * What is wrong with a page: words under 2.5, over one another, or with a line through them; the square over what is drawn, or without words; words that leave
 * `inside`. The map is a picture of the whole and is left out.
 */
export function pageFaults(
  { groups }: Page,
  inside: { minX: number; minY: number; maxX: number; maxY: number },
): string[] {
  const own = groups.filter(({ name }) => name !== "map");
  const texts = own.flatMap((group) =>
    group.marks.texts.map(({ text, height }, i) => ({
      text,
      height,
      box: boxOf(group, i),
      name: group.name,
    })),
  );
  const lines = own.map((group) => ({ name: group.name, places: drawnBy(group) }));
  const faults: string[] = [];
  for (const [i, { text, height, box }] of texts.entries()) {
    if (height < 2.5) faults.push(`small: ${text}`);
    const [x1, y1, x2, y2] = box;
    if (
      x1 < inside.minX - 0.01 ||
      y1 < inside.minY - 0.01 ||
      x2 > inside.maxX + 0.01 ||
      y2 > inside.maxY + 0.01
    )
      faults.push(`outside: ${text}`);
    for (const other of texts.slice(i + 1))
      if (x1 < other.box[2] && other.box[0] < x2 && y1 < other.box[3] && other.box[1] < y2)
        faults.push(`${text} over ${other.text}`);
    for (const { name, places } of lines)
      if (places.some(([x, y]) => x > x1 && x < x2 && y > y1 && y < y2))
        faults.push(`${name} through ${text}`);
  }
  const square = own.find(({ name }) => name === "square");
  if (square === undefined) return [...faults, "no square"];
  if (square.marks.texts.length !== 1) faults.push("a square without words");
  const sides = drawnBy(square);
  const drawn = lines
    .filter(({ name }) => /^(layer|join|match)\b/.test(name))
    .flatMap(({ places }) => places);
  if (sides.some(([x, y]) => drawn.some(([a, b]) => Math.abs(a - x) < 0.5 && Math.abs(b - y) < 0.5)))
    faults.push("the square over what is drawn");
  return faults;
}
