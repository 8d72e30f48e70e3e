import { step } from "../../../step/step.ts";
import type { PaperSize } from "../neck/input.ts";
import type { Sheet } from "../sheet.ts";
import { type InsidePicture, insidePicture } from "./inside-picture.ts";
import { setUpPages, sizeOf } from "./set-up-pages.ts";
import type { SetUpWords } from "./set-up-words.ts";

/** What the sheet of a set-up with an inside template shows and says; its name is that of the template's file, and which face is up. */
export type InsideSheetInput = {
  readonly name: string;
  readonly papers: readonly PaperSize[];
  readonly picture: InsidePicture;
  readonly words: SetUpWords;
};

/** The pages of the sheet of a set-up with an inside template, without their titles. */
export const insideSheet = step(
  "sheet.set-up.inside",
  1,
  ({ picture, ...given }: InsideSheetInput): readonly Sheet[] =>
    setUpPages({
      ...given,
      bare: sizeOf([picture.plate]),
      picture: (scale) => insidePicture(picture, scale),
      pictureWords: "THE TEMPLATE ON THE WORK, FROM ABOVE",
    }),
);
