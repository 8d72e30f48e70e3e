import type { Blank } from "../instrument/blank.ts";
import { hasSawDrawing } from "../order/saw-names.ts";
import type { Model } from "../workshop/model.ts";
import { sawingNamed } from "../workshop/part-sawing.ts";
import type { StockFound } from "../workshop/stock/stock-for.ts";
import type { Way } from "../workshop/stock/ways.ts";
import type { Check, Finding } from "./check.ts";
import { sawFiles } from "./saw-files.ts";

/** What a check of stock asks of a model, what it holds back, and what to change where no board is large enough. */
type BlankOf = Pick<Finding, "subject" | "holds"> & {
  readonly id: string;
  readonly blank: (model: Model) => Blank;
  readonly stock: (model: Model) => StockFound;
  readonly woods: (model: Model) => readonly string[];
  readonly change: string;
  readonly applies?: NonNullable<Check["applies"]>;
};

/** Whether the shop has a board that a part's blank comes out of, its length along the grain. Found: what is missing in all, mm. */
function blankStockOf({ id, subject, holds, blank, stock, woods, change, applies }: BlankOf): Check {
  return {
    ...{ id, ...(applies === undefined ? {} : { applies }) },
    of: (model) => {
      const { length, width, thickness } = blank(model);
      const said = `a blank of ${length} x ${width} x ${thickness} mm`;
      const usual: Omit<Finding, "id" | "status" | "found" | "why"> = {
        ...{ stake: "spoilage", subject, limit: 0, unit: "mm", holds },
        source:
          "the shop's stock; what planing and parting take is general trade knowledge: default, confirm",
      };
      const found = stock(model);
      if (found.kind === "no-wood") {
        return {
          ...{ ...usual, status: "refuse", found: Math.max(length, width, thickness) },
          why: `the shop has no board of ${woods(model).join(" or ")} for ${said}: add one to the shop's stock`,
        };
      }
      if (found.kind === "ok") {
        const why = `${said} comes out of ${found.way.board}, ${how(found.way)}`;
        return { ...usual, status: "pass", found: 0, why };
      }
      const { missing, board } = found.nearest;
      const short = (["length", "width", "thickness"] as const).filter((size) => missing[size] > 0);
      const misses = short.map((size) => `${Math.round(missing[size] * 100) / 100} mm of ${size}`);
      return {
        ...{ ...usual, status: "refuse", found: short.reduce((sum, size) => sum + missing[size], 0) },
        why: `no board holds ${said}; ${board}, ${how(found.nearest)}, misses ${misses.join(" and ")}: ${change}`,
      };
    },
  };
}

function how({ plies, lies }: Way): string {
  if (plies === 1) return "in one piece";
  return lies === "joined" ? `joined edge to edge from ${plies} pieces` : `glued up from ${plies} plies`;
}

/** Whether the shop has a board that the neck's blank comes out of. */
export const blankStock = blankStockOf({
  ...{ id: "blank.stock", subject: "neck", holds: sawFiles },
  blank: ({ instrument }) => instrument.neckBlank,
  stock: ({ sawing }) => sawing.stock,
  woods: ({ spec }) => spec.neckWoods,
  change: "raise neck.plies, add a board to the shop's stock, or lower neck.allowance.*",
});

/** Whether the shop has a board that the fingerboard's blank comes out of, in one piece. */
export const boardBlankStock = blankStockOf({
  ...{ id: "blank.stock.fingerboard", subject: "fingerboard", holds: ["fingerboard", "fingerboard-saw"] },
  blank: ({ instrument }) => instrument.boardBlank,
  stock: ({ blanks }) => blanks.fingerboard,
  woods: ({ spec }) => spec.boardWoods,
  change:
    "add a board to the shop's stock, lower fingerboard.allowance.* or fingerboard.edge, or raise fingerboard.radius",
});

/** Whether the shop has boards that the blanks of wings or of a body in one piece come out of; a body's may be joined from several pieces. */
export const sawnBlankStocks: readonly Check[] = (["wing-bass", "wing-treble", "body"] as const).map(
  (part) => {
    const file = `${part}-saw` as const;
    const own = (model: Model) => sawingNamed(model.partSawing(), file).stock;
    return blankStockOf({
      ...{ id: `blank.stock.${file}`, subject: part, holds: [file] },
      applies: (spec) => hasSawDrawing(spec, file),
      blank: (model) => own(model).blank,
      stock: (model) => own(model).stock,
      woods: (model) => own(model).woods,
      change: `add a board to the shop's stock, or lower ${part.replace("-", ".")}.thickness or its width`,
    });
  },
);
