import { extentsOf } from "../../../geometry/measure.ts";
import { step } from "../../../step/step.ts";
import type { Annotated } from "../annotate.ts";
import { boxOf } from "../lettering.ts";
import { moved } from "../moved.ts";
import { scales } from "../scales.ts";
import { type Sheet, together } from "../sheet.ts";
import { emptySheet } from "../sheet-frame.ts";
import { shelved } from "../shelve.ts";
import { named } from "../view-name.ts";
import { headView } from "./head-view.ts";
import { forHand, letterOf, type NeckSheetInput, type PaperSize } from "./input.ts";
import { planView } from "./plan-view.ts";
import { sectionView } from "./section-view.ts";
import { sideView } from "./side-view.ts";
import { sunkList } from "./sunk-list.ts";

type Scale = (typeof scales)[number];

/**
 * The sheet of a neck without its title: plan over side in third-angle projection, its sections, the head's face; on the first of the
 * papers that holds it, at the largest of the scales. A left-hand neck is turned over before anything is written, so its
 * words stay readable.
 */
export const neckSheet = step("sheet.neck", 1, (given: NeckSheetInput): Sheet => {
  const input = forHand(given);
  const views = remembered(input);
  const { minX, maxX } = extentsOf([input.plan])!;
  for (const paper of given.papers) {
    const { frame } = emptySheet(paper, "");
    const wide = frame.maxX - frame.minX;
    for (const main of scales.filter(({ factor }) => (maxX - minX) * factor < wide)) {
      for (const { detail, head } of detailScales(main)) {
        const sheet = sheetOf(paper, main, views(main, detail, head));
        if (sheet !== undefined) return sheet;
      }
    }
  }
  throw new RangeError("the neck's sheet has room on no paper");
});

/** Scales of the sections and of the head's face, neither smaller than that of the main views: the larger smallest first. */
function detailScales(main: Scale): { readonly detail: Scale; readonly head: Scale }[] {
  const larger = scales.filter(({ factor }) => factor >= main.factor);
  const pairs = larger.flatMap((detail) => larger.map((head) => ({ detail, head })));
  const least = (of: (typeof pairs)[number]) => Math.min(of.detail.factor, of.head.factor);
  return pairs.sort(
    (a, b) => least(b) - least(a) || b.detail.factor - a.detail.factor || b.head.factor - a.head.factor,
  );
}

/** The views at their scales, each drawn once however many arrangements are tried. */
function remembered(input: NeckSheetInput) {
  const drawn = new Map<string, Annotated>();
  const once = (key: string, draw: () => Annotated): Annotated => {
    const known = drawn.get(key);
    if (known !== undefined) return known;
    const made = draw();
    drawn.set(key, made);
    return made;
  };
  return (main: Scale, detail: Scale, head: Scale): readonly Annotated[] => [
    once(`main ${main.text}`, () => planOverSide(input, main)),
    ...input.sections.map((section, i) =>
      once(`${i} ${detail.text}`, () => {
        const view = sectionView(input, section, detail.factor);
        const letter = letterOf(i);
        return named(view, `${letter}-${letter}  ${detail.text}`, stationWords(section.name), 0, 0);
      }),
    ),
    once(`head ${head.text}`, () => {
      const middle = -input.face.length * head.factor;
      return named(headView(input, head.factor), `HEAD, SQUARE TO ITS FACE  ${head.text}`, "", middle, 0);
    }),
    ...sunkList(input),
  ];
}

function stationWords(name: string): string {
  return /^[\d.]+$/.test(name) ? `STATION X ${name}` : `STATION ${name.toUpperCase()}`;
}

/** Both main views with one x under the other. */
function planOverSide(input: NeckSheetInput, { text, factor }: Scale): Annotated {
  const { minX, maxX } = extentsOf([input.plan])!;
  const [from, to] = [minX * factor, maxX * factor];
  const plan = named(planView(input, factor), `PLAN FROM THE FRONT  ${text}`, "", from, to);
  const seen = input.hand === "right" ? "BASS" : "TREBLE";
  const side = named(sideView(input, factor), `SIDE FROM THE ${seen} SIDE  ${text}`, "", from, to);
  if (plan.kind !== "ok") return plan;
  if (side.kind !== "ok") return side;
  const under = moved(side.marks, 0, boxOf(plan.marks).minY - 5 - boxOf(side.marks).maxY);
  return { kind: "ok", marks: together([plan.marks, under]) };
}

function sheetOf(paper: PaperSize, main: Scale, views: readonly Annotated[]): Sheet | undefined {
  const drawn = views.flatMap((view) => (view.kind === "ok" ? [view.marks] : []));
  if (drawn.length < views.length) return undefined;
  const empty = emptySheet(paper, main.text);
  const put = shelved(drawn, empty.frame, [empty.titleBox]);
  return put.kind === "ok" ? { ...empty, ...together(put.views) } : undefined;
}
