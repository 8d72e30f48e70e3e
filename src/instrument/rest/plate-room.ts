import type { Path } from "../../geometry/path.ts";
import { polygonRound } from "../../geometry/polygon-round.ts";
import { clearOfPost } from "../../geometry/solid/clear-of-post.ts";
import { fromFrame } from "../../geometry/solid/frame.ts";
import { step } from "../../step/step.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreAxes } from "../core/from-core.ts";
import { intoPlane, type OwnPlane } from "../own-plane.ts";
import { cornersOf } from "./edges-of.ts";

/** What stands up to `top` over an outline in a part's plane, and a plate over the core's front: its outline there, its top's height and its thickness; mm. */
export type PlateRoomInput = {
  readonly plane: OwnPlane;
  readonly path: Path;
  readonly top: number;
  readonly core: CoreFrame;
  readonly plate: { readonly path: Path; readonly height: number; readonly thickness: number };
};

/** The room between what stands on a part and a plate beside it, mm: negative where it stands through the plate or the plate through it. */
export const plateRoom = step(
  "rest.plate-room",
  1,
  ({ plane, path, top, core, plate }: PlateRoomInput): number => {
    const [axes, into] = [coreAxes(core), intoPlane(plane)];
    const placed = ({ x, y }: { x: number; y: number }, z: number) => into(fromFrame(axes, x, y, z));
    const outline = cornersOf(plate.path);
    const post = { corners: cornersOf(path), top };
    const rims = [plate.height, plate.height - plate.thickness].flatMap((height) => {
      const ring = outline.map((point) => placed(point, height));
      return ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length]! }));
    });
    const edge = clearOfPost(post, rims);
    // A post wholly under or in the plate doesn't meet its rim.
    const under = placed({ x: 0, y: 0 }, plate.height - plate.thickness).z;
    const shadow = outline.map((point) => placed(point, plate.height));
    const within = post.corners.some((corner) => polygonRound(shadow, corner));
    return within ? Math.min(edge, under - top) : edge;
  },
);
