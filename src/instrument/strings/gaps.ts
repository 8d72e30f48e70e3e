import { step } from "../../step/step.ts";
import { type BoardSurface, boardTop } from "../fingerboard/surface.ts";
import { stringAcross } from "./layout.ts";

/** Where strings pass nut and bridge, their centres' y and z and their diameters, highest string first; mm. */
export type StringGapsInput = {
  readonly stringLength: number;
  readonly board: BoardSurface;
  readonly nut: readonly { readonly y: number; readonly z: number }[];
  readonly bridge: readonly { readonly y: number; readonly z: number }[];
  readonly diameters: readonly number[];
  /** Into how many equal pieces the board's length is cut to follow its surface. */
  readonly pieces: number;
};

/**
 * A string over a straightedge that touches the board's surface under it at the nut and at the board's end and reaches on to the
 * bridge, mm along z: its underside at the three, and the board's surface at each station from nut to end, negative where it is
 * hollow.
 */
export type StringGaps = {
  readonly nut: number;
  readonly end: number;
  readonly bridge: number;
  readonly surface: readonly number[];
};

/** Every string's height over the board along it, highest string first. */
export const stringGaps = step("strings.gaps", 1, (given: StringGapsInput): readonly StringGaps[] => {
  const { stringLength, board, pieces } = given;
  const { length } = board.taper;
  return given.diameters.map((diameter, i) => {
    const [nut, bridge] = [given.nut[i]!, given.bridge[i]!];
    const under = (x: number) =>
      boardTop(board, x, stringAcross({ nut: nut.y, bridge: bridge.y }, x, stringLength));
    const [first, last] = [under(0), under(length)];
    const straight = (x: number) => first + ((last - first) * x) / length;
    const over = (x: number) => nut.z + ((bridge.z - nut.z) * x) / stringLength - diameter / 2 - straight(x);
    const stations = Array.from({ length: pieces + 1 }, (_, k) => (length * k) / pieces);
    return {
      ...{ nut: over(0), end: over(length), bridge: over(stringLength) },
      surface: stations.map((x) => under(x) - straight(x)),
    };
  });
});
