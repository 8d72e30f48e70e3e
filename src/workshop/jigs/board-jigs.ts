import { boardStations } from "../../instrument/fingerboard/board.ts";
import { boardRadius } from "../../instrument/fingerboard/surface.ts";
import { boardWidth } from "../../instrument/fingerboard/taper.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { handOnly, type Jig, jigOf } from "./jig.ts";
import type { PrintRules } from "./print-rules.ts";
import { radiusGauge, radiusGaugeSize } from "./radius-gauge.ts";
import { paperThickness, sandingBlock, sandingBlockSize } from "./sanding-block.ts";

/** How long a sanding block is at most, mm: what a hand holds level (G). */
const longest = 125;

/**
 * What a board's radius is brought to and measured with: of a cylinder one gauge and one block; of a cone a gauge at the nut, at each of the design's
 * stations and at the end, and blocks that follow each other along the board.
 */
export function boardJigs(model: Model, rules: PrintRules): Jig[] {
  return [...gauges(model, rules), ...blocks(model, rules)];
}

function gauges({ spec, instrument: { surface } }: Model, rules: PrintRules): Jig[] {
  const { length } = surface.taper;
  const places =
    surface.kind === "cylinder"
      ? [{ name: "radius", x: length, line: [] }]
      : [
          { name: "radius-nut", x: 0, line: ["NUT"] },
          ...boardStations(spec).map((x) => ({ name: `radius-${x}`, x, line: [`X ${x}`] })),
          { name: "radius-end", x: length, line: ["END"] },
        ];
  return places.map(({ name, x, line }) => {
    const radius = boardRadius(surface, x);
    const thickness = dimensionOf(spec, "gauge.thickness");
    const lines = [[spec.order, ...line].join(" "), `RADIUS ${radius.toFixed(2)}`];
    const input = { radius, width: boardWidth(surface.taper, x), thickness, lines };
    const size = radiusGaugeSize(input);
    const where = surface.kind === "cylinder" ? "anywhere along it" : `${x} mm from the nut`;
    return jigOf(
      {
        ...{ name, part: "fingerboard", along: { from: 0, to: size.x }, wide: size.y, high: thickness },
        what: `printed gauge for the fingerboard's radius, set on square across it ${where}: it measures, and ${handOnly}`,
      },
      rules,
      radiusGauge,
      input,
    );
  });
}

function blocks({ spec, instrument: { surface } }: Model, rules: PrintRules): Jig[] {
  const { length } = surface.taper;
  const tallest = Math.min(longest, rules.bed.z);
  const cone = surface.kind === "cone";
  const count = cone ? Math.ceil(length / tallest) : 1;
  const long = cone ? length / count : Math.min(length, tallest);
  return Array.from({ length: count }, (_, i) => {
    // A cylinder's block serves all along, so it is as wide as the board is at its end.
    const [from, to] = cone ? [i * long, (i + 1) * long] : [length, length];
    const at = (x: number) => ({ radius: boardRadius(surface, x), width: boardWidth(surface.taper, x) });
    const lines = [
      spec.order,
      ...(cone ? [`X ${from.toFixed(0)} TO ${to.toFixed(0)}`] : []),
      `R ${cone ? `${at(from).radius.toFixed(2)}-` : ""}${at(to).radius.toFixed(2)}`,
      `PAPER ${paperThickness.toFixed(2)}`,
    ];
    const input = { near: at(from), far: at(to), length: long, paper: paperThickness, lines };
    const { wide, back } = sandingBlockSize(input);
    const own = cone
      ? `from ${from.toFixed(0)} to ${to.toFixed(0)} mm from the nut and nowhere else, its lettered end toward the bridge`
      : "all along";
    return jigOf(
      {
        ...{ name: cone ? `sanding-block-${i + 1}-${count}` : "sanding-block", part: "fingerboard" },
        ...{ along: { from: -wide, to: wide }, wide: back + at(to).radius, high: long + 0.6 },
        what: `printed block for sanding the fingerboard across by hand, ${own}; its hollow allows for paper ${paperThickness} mm thick, measure yours; it makes no scoop, and ${handOnly}`,
      },
      rules,
      sandingBlock,
      input,
    );
  });
}
