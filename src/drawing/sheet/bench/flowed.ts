import { moved } from "../moved.ts";
import { type Box, type Marks, together } from "../sheet.ts";
import type { Block, Section } from "./block.ts";

/** What is kept free between two sections, mm. */
const between = 3;

/** How many columns are tried for a section, more than a page and the next one have. */
const most = 12;

/** The columns of a page, counted from 0, in the order in which they are filled. */
export type Columns = (page: number) => readonly Box[];

/** Where writing has got to: a column of a page, and how far down, mm. */
type Place = { readonly page: number; readonly column: number; readonly y: number };

type Put = { readonly page: number; readonly marks: Marks };

const nothing: Block = { high: 0, marks: { lines: [], texts: [] } };

/**
 * Sections laid into columns one after the other, page by page. A section goes on in the next column with its head written again. Nothing is
 * left out: a row that is higher than a whole column throws a RangeError.
 */
export function flowed(sections: readonly Section[], columns: Columns): Marks[] {
  const put: Put[] = [];
  let at = top(columns, 0, 0);
  for (const section of sections) at = written(section, at, columns, put);
  return Array.from({ length: at.page + 1 }, (_, page) =>
    together(put.filter((one) => one.page === page).map(({ marks }) => marks)),
  );
}

function top(columns: Columns, page: number, column: number): Place {
  return { page, column, y: columns(page)[column]!.maxY };
}

function next(columns: Columns, { page, column }: Place): Place {
  return column + 1 < columns(page).length ? top(columns, page, column + 1) : top(columns, page + 1, 0);
}

function boxAt(columns: Columns, { page, column }: Place): Box {
  return columns(page)[column]!;
}

function wideAt(columns: Columns, at: Place): number {
  const { minX, maxX } = boxAt(columns, at);
  return maxX - minX;
}

/** Writes one section from a place on, and tells where writing has got to. */
function written({ head, rows, whole }: Section, from: Place, columns: Columns, put: Put[]): Place {
  let at = started({ head, rows, whole }, from, columns);
  const write = ({ high, marks }: Block) => {
    put.push({ page: at.page, marks: moved(marks, boxAt(columns, at).minX, at.y) });
    at = { ...at, y: at.y - high };
  };
  const headHere = () => head?.(wideAt(columns, at)) ?? nothing;
  write(headHere());
  for (const [i, row] of rows.entries()) {
    if (i > 0 && !holds(columns, at, row(wideAt(columns, at)).high)) {
      at = next(columns, at);
      write(headHere());
    }
    const block = row(wideAt(columns, at));
    if (!holds(columns, at, block.high))
      throw new RangeError("a row of a bench sheet is higher than its column");
    write(block);
  }
  return at;
}

/** Where a section begins: a little under what stands there, or in the next column with room for its head and first row, or for all of it. */
function started(
  { head, rows, whole }: Pick<Section, "head" | "rows"> & { readonly whole: Section["whole"] },
  from: Place,
  columns: Columns,
): Place {
  const isEmpty = (at: Place) => at.y >= boxAt(columns, at).maxY - 1e-9;
  const high = (at: Place, count: number) => {
    const wide = wideAt(columns, at);
    return rows.slice(0, count).reduce((sum, row) => sum + row(wide).high, (head?.(wide) ?? nothing).high);
  };
  const fits = (at: Place) =>
    holds(columns, at, high(at, whole === true ? rows.length : 1)) ||
    (isEmpty(at) && holds(columns, at, high(at, 1)));
  let at = isEmpty(from) ? from : { ...from, y: from.y - between };
  for (let tries = 0; tries < most && !fits(at); tries++) at = next(columns, at);
  return at;
}

function holds(columns: Columns, at: Place, high: number): boolean {
  return at.y - high >= boxAt(columns, at).minY - 1e-9;
}
