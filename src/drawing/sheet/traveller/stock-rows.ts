import type { Blank } from "../../../instrument/blank.ts";
import type { Model } from "../../../workshop/model.ts";
import { inMm } from "../../../workshop/sequence/work-step.ts";
import type { StockFound } from "../../../workshop/stock/stock-for.ts";

type PartOfStock = { readonly part: string; readonly blank: Blank; readonly stock: StockFound };

function partsOf({ instrument, sawing, blanks }: Model): PartOfStock[] {
  return [
    { part: "neck", blank: instrument.neckBlank, stock: sawing.stock },
    ...blanks.sawn,
    { part: "fingerboard", blank: instrument.boardBlank, stock: blanks.fingerboard },
    ...blanks.small,
  ];
}

/** A row for each part: its name, wood, blank, board and how it lies in that, and its finished mass, g. */
export function partRows(model: Model): string[][] {
  const stock = partsOf(model);
  return model.masses.parts.map(({ name, wood, mass }) => {
    const own = stock.find(({ part }) => part === name);
    return [
      ...[name, wood],
      own === undefined ? "bought" : sizeOf(own.blank),
      own === undefined ? "" : boardOf(own.stock),
      mass.toFixed(1),
    ];
  });
}

function sizeOf({ length, width, thickness }: Blank): string {
  return [length, width, thickness].map(inMm).join(" x ");
}

function boardOf(stock: StockFound): string {
  if (stock.kind === "no-wood") return "NO BOARD OF ITS WOOD";
  if (stock.kind === "too-small") return `NONE HOLDS IT; NEAREST ${stock.nearest.board}`;
  const { board, lies, plies } = stock.way;
  const how = {
    flat: "flat",
    turned: "turned a quarter",
    glued: `${plies} plies`,
    joined: `${plies} pieces, joined`,
  };
  return `${board}, ${how[lies]}`;
}

/** A row for each piece on its board, as it is sawn out: from the board's end and edge, mm. */
export function cutRows({ blanks: { cutList } }: Model): string[][] {
  return [
    ...cutList.boards.flatMap(({ board, number, pieces }) =>
      pieces.map(({ part, length, width, thickness, x, y }) => [
        ...[number === 1 ? board : `${board}, no ${number}`, part],
        ...[inMm(length), inMm(width), inMm(thickness), `${inMm(x)}, ${inMm(y)}`, ""],
      ]),
    ),
    ...cutList.leaves.map(({ veneer, part, length, width, thickness, count }) => [
      ...[`veneer ${veneer}, ${count} of`, part],
      ...[inMm(length), inMm(width), inMm(thickness), "", ""],
    ]),
  ];
}

/** What is used of each board and of how much of it pieces are made; the parts that no board holds. */
export function cutRemarks({ blanks: { cutList } }: Model): string[] {
  const percent = (share: number) => `${Math.round(100 * share)} %`;
  return [
    ...cutList.boards.map(
      ({ board, wood, number, length, width, thickness, used, yield: own }) =>
        `${board}${number === 1 ? "" : `, no ${number}`}: ${wood}, ${inMm(length)} x ${inMm(width)} x ${inMm(thickness)}, ${inMm(used)} of its length used, yield ${percent(own)}`,
    ),
    ...(cutList.boards.length === 0 ? [] : [`All boards together: yield ${percent(cutList.yield)}`]),
    ...cutList.missing.map(({ part, blank }) => `No board holds the blank of ${part}: ${sizeOf(blank)}`),
  ];
}
