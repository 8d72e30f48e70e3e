import { step } from "../../../step/step.ts";
import type { PaperSize } from "../neck/input.ts";
import type { Sheet } from "../sheet.ts";
import { type GuidedPicture, guidedPicture } from "./guided-picture.ts";
import { setUpPages, sizeOf } from "./set-up-pages.ts";
import type { SetUpWords } from "./set-up-words.ts";

/** What the sheet of a set-up with a guided edge shows and says; its name is that of its fixture's file, and which face is up. */
export type GuidedSheetInput = {
  readonly name: string;
  readonly papers: readonly PaperSize[];
  readonly picture: GuidedPicture;
  readonly words: SetUpWords;
};

/** The pages of the sheet of a set-up at a shaper or a router, without their titles. */
export const guidedSheet = step(
  "sheet.set-up.guided",
  1,
  ({ picture, ...given }: GuidedSheetInput): readonly Sheet[] =>
    setUpPages({
      ...given,
      bare: sizeOf([picture.template, picture.part]),
      picture: (scale) => guidedPicture(picture, scale),
      pictureWords: "THE WORK IN ITS FIXTURE, FROM ABOVE",
    }),
);
