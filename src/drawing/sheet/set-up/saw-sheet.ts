import { step } from "../../../step/step.ts";
import type { PaperSize } from "../neck/input.ts";
import type { Sheet } from "../sheet.ts";
import { type SawPicture, sawPicture } from "./saw-picture.ts";
import { setUpPages, sizeOf } from "./set-up-pages.ts";
import type { SetUpWords } from "./set-up-words.ts";

/** What the sheet of a cut at the bandsaw shows and says; its name is that of its drawing, which cut, and which face is up. */
export type SawSheetInput = {
  readonly name: string;
  readonly papers: readonly PaperSize[];
  readonly picture: SawPicture;
  readonly words: SetUpWords;
};

/** The pages of the sheet of a cut at the bandsaw, without their titles. */
export const sawSheet = step(
  "sheet.set-up.saw",
  1,
  ({ picture, ...given }: SawSheetInput): readonly Sheet[] =>
    setUpPages({
      ...given,
      bare: sizeOf([picture.blank]),
      picture: (scale) => sawPicture(picture, scale),
      pictureWords: "THE BLANK ON THE TABLE, FROM ABOVE",
    }),
);
