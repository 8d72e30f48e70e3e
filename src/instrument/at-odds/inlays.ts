import { extentsOf } from "../../geometry/measure.ts";
import { depthsIn } from "../../geometry/path-measures/depth-in.ts";
import { pathsApart } from "../../geometry/path-measures/paths-apart.ts";
import { rectangleOf } from "../../geometry/rectangle.ts";
import type { Inlay, MadeInlay } from "../fingerboard/inlay.ts";
import { placesOn } from "../fingerboard/places-on.ts";
import type { Instrument } from "../instrument.ts";
import { type Contradiction, type Look, mm, unless } from "./at-odds.ts";

/** Wood between an inlay and the board's edge, mm (G: default, confirm). */
const atEdge = 1;

/** Wood between an inlay and a fret's slot, mm (G: default, confirm). */
const atSlot = 0.5;

const sizes = ["inlay.length", "inlay.width", "inlay.cutter", "inlay.clearance"];

/** Wood between two inlays, mm (G: default, confirm). */
const between = 0.5;

/** Inlays that can't be made, that come too near to each other or to the board's edge, that go through the board, or that stand in a fret's slot. */
export const inlaysAtOdds: Look = (of, made) => [
  ...made.inlays.flatMap((inlay) =>
    inlay.kind === "ok"
      ? [...nearEdge(inlay, made), ...tooDeep(inlay, of("fingerboard.edge")), ...inSlots(inlay, made)]
      : [unmade(inlay, of("inlay.cutter"))],
  ),
  ...inEachOther(made.inlays.filter((inlay) => inlay.kind === "ok")),
];

function unmade(inlay: Exclude<Inlay, MadeInlay>, cutter: number): Contradiction {
  const { id } = inlay;
  const told = (found: string, allowed: string, hint: string, place = `inlay.${id}`) => {
    return { ids: sizes, place, found: `inlay ${id}: ${found}`, allowed, hint };
  };
  if (inlay.kind === "no-recess")
    return told(
      `a recess that a cutter of ${mm(cutter)} doesn't cut in one piece`,
      inlay.would === null ? "a wider outline" : `a cutter of at most ${mm(inlay.would)}`,
      inlay.would === null ? `make inlay ${id} wider` : `set inlay.cutter to ${mm(inlay.would)} or less`,
    );
  if (inlay.kind === "no-insert")
    return told("a clearance that takes the insert apart", "one piece", "lower inlay.clearance");
  if (inlay.kind === "crossing")
    return told("an outline that crosses itself", "edges that meet at their ends", "mend its edges");
  const allowed = inlay.kind === "no-room" ? "a corner that has room" : "a fair edge of its own";
  const { edge } = inlay;
  return told(`its edge ${edge} can't be made`, allowed, `mend edge ${edge}`, `inlay.${id}.${edge}`);
}

function nearEdge({ id, design }: MadeInlay, { board }: Instrument): Contradiction[] {
  if (board.kind !== "ok") return [];
  const { path } = board;
  const woodAt = depthsIn(path);
  // A board is convex, so a box whose corners are far enough inside has nothing nearer.
  const box = rectangleOf(extentsOf([design])!).points;
  if (box.every((corner) => woodAt(corner) >= atEdge)) return [];
  const wood = Math.min(...placesOn(design).map(woodAt));
  return unless(wood >= atEdge, sizes, {
    place: `inlay.${id}`,
    found:
      wood < 0 ? `inlay ${id} ${mm(-wood)} over the board's edge` : `${mm(wood)} of wood beside inlay ${id}`,
    allowed: `at least ${mm(atEdge)} to the board's edge`,
    hint: `move inlay ${id} or make it smaller`,
  });
}

/** The recess's floor must stay over the board's back; what is left under it is the floor's height. */
function tooDeep({ id, floor }: MadeInlay, edge: number): Contradiction[] {
  return unless(floor >= atEdge, ["inlay.depth", "fingerboard.edge"], {
    place: `inlay.${id}`,
    found: `${mm(floor)} of wood under inlay ${id}, in a board ${mm(edge)} thick at its edge`,
    allowed: `at least ${mm(atEdge)}`,
    hint: "lower inlay.depth or raise fingerboard.edge",
  });
}

/** A slot crosses the board, so one whose place along it is an inlay's cuts it. */
function inSlots({ id, design }: MadeInlay, { fretSlots }: Instrument): Contradiction[] {
  if (fretSlots === null) return [];
  const { minX, maxX } = extentsOf([design])!;
  const near = fretSlots.width / 2 + atSlot;
  const at = fretSlots.slots.findIndex(({ x }) => x > minX - near && x < maxX + near);
  return unless(at < 0, sizes, {
    place: `inlay.${id}`,
    found: `inlay ${id} in or beside the slot of fret ${at + 1}`,
    allowed: `at least ${mm(atSlot)} of wood to every slot`,
    hint: `move inlay ${id} or make it shorter`,
  });
}

/** Every inlay against those before it; told at the later one. */
function inEachOther(inlays: readonly MadeInlay[]): Contradiction[] {
  return inlays.flatMap((inlay, i) =>
    inlays.slice(0, i).flatMap((other) => {
      const wood = pathsApart(inlay.design, other.design);
      return unless(wood >= between, sizes, {
        place: `inlay.${inlay.id}`,
        found:
          wood < 0
            ? `inlay ${inlay.id} in inlay ${other.id}`
            : `${mm(wood)} of wood between inlays ${other.id} and ${inlay.id}`,
        allowed: `at least ${mm(between)}`,
        hint: `move inlay ${inlay.id} or ${other.id}, or make one smaller`,
      });
    }),
  );
}
