import { circle } from "../../geometry/circle.ts";
import type { Path, PathPoint } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { SpecFace } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import type { Store } from "../../step/store.ts";
import { type FairEdges, fairEdges, type Ring, ringOf } from "../ring.ts";
import type { CrownFace } from "./face.ts";

/** The face as the design has it with its fair edges, and the crown in the bridge's own axes; mm. */
export type BridgeInput = {
  readonly face: SpecFace;
  readonly crown: CrownFace;
  readonly fair: { readonly cut: FairEdges; readonly finished: FairEdges };
};

/**
 * The bridge in its flat tail-side face, seen from the tail: first axis y (treble positive), second up from the core's
 * front, mm. `cut` has the smooth crown, `finished` the notched one; both counter-clockwise.
 */
export type BridgeOutline =
  | {
      readonly kind: "ok";
      readonly cut: Path;
      readonly finished: Path;
      readonly holes: readonly {
        readonly id: string;
        readonly size: number;
        readonly at: Point;
        readonly path: Path;
      }[];
    }
  | Exclude<Ring, { readonly kind: "ok" }>;

/** What the bridge's outlines follow from; the fair edges of its face are answered by the store. */
export function bridgeInput(store: Store, face: SpecFace, crown: CrownFace): BridgeInput {
  const fair = ({ cut, finished }: ReturnType<typeof crowns>) => ({
    ...{ cut: fairEdges(store, face, cut), finished: fairEdges(store, face, finished) },
  });
  return { face, crown, fair: fair(crowns(face, crown)) };
}

/** The two crowns that an edge may follow, in the face's frame. */
function crowns(face: SpecFace, { smooth, notched }: CrownFace) {
  const into = (points: readonly PathPoint[]) =>
    points.map((point) => ({ ...point, x: point.x + face.along / 2 }));
  return { cut: { "bridge.crown": into(smooth) }, finished: { "bridge.crown": into(notched) } };
}

/** The bridge's outlines: the design's ring of edges, from the foot's bass end, round the crown. */
export const bridgeOutline = step(
  "bridge.outline",
  2,
  ({ face, crown, fair }: BridgeInput): BridgeOutline => {
    const shift = face.along / 2;
    const back = (path: Path): Path => ({
      ...path,
      points: path.points.map((point) => ({ ...point, x: point.x - shift })),
    });
    const curves = crowns(face, crown);
    const cut = ringOf(face, curves.cut, fair.cut);
    const finished = ringOf(face, curves.finished, fair.finished);
    if (cut.kind !== "ok") return cut;
    if (finished.kind !== "ok") return finished;
    const holes = face.holes.map(({ id, at: [x, y], size }) => {
      const at = { x: x - shift, y };
      return { id, size, at, path: circle(at, size / 2) };
    });
    return { kind: "ok", cut: back(cut.path), finished: back(finished.path), holes };
  },
);
