import { circle } from "../../geometry/circle.ts";
import type { Point } from "../../geometry/point.ts";
import { lettering } from "../sheet/lettering.ts";
import type { Marks, SheetText } from "../sheet/sheet.ts";
import { arcFrom } from "./arc-from.ts";
import type { BowAnglesPlotInput } from "./bow-angles-input.ts";
import { said } from "./plot-paper.ts";

/** The crown from a little outside the outer strings, and each string's centre with its name under it. */
export function bowCrown(
  { crown, strings }: BowAnglesPlotInput,
  places: readonly Point[],
  onPaper: (place: { readonly y: number; readonly z: number }) => Point,
  scale: number,
): Marks {
  const reach = Math.max(...places.map(({ x }) => Math.abs(x))) + 4;
  const radius = crown.radius * scale;
  const centre = onPaper(crown);
  const ends = [reach, -reach].map((x) =>
    Math.atan2(Math.sqrt(Math.max(0, radius ** 2 - (x - centre.x) ** 2)), x - centre.x),
  );
  return {
    lines: [
      { weight: "outline", path: arcFrom(centre, radius, ends[0]!, ends[1]!) },
      ...places.map((place) => ({ weight: "curve" as const, path: circle(place, 1.1) })),
    ],
    texts: strings.map(({ name }, i): SheetText => {
      const [dx, dy] = [places[i]!.x - centre.x, places[i]!.y - centre.y];
      const long = Math.hypot(dx, dy);
      const place = { x: places[i]!.x - (6 * dx) / long, y: places[i]!.y - (6 * dy) / long };
      return { ...said(name, place.x, place.y - lettering.title, "center"), height: lettering.title };
    }),
  };
}
