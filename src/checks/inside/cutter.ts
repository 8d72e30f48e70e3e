import { plain } from "../../workshop/guided/fault.ts";
import { reliefFeet } from "../../workshop/inside/relief-feet.ts";
import { type FixtureRule, ofSetUp, untried } from "../guided/fixture-check.ts";
import type { OneOpening } from "./inside-check.ts";

/** Whether the cutter reaches a recess's floor, through the template where a bush rides in that. Found: its cutting length, mm. */
export const insideShort: FixtureRule<OneOpening> = ofSetUp<OneOpening>(
  "cutter.short",
  {
    ...{ stake: "injury", unit: "mm", limit: 0 },
    source:
      "the recess's depth and the template's thickness; nothing is known of the shank: default, confirm",
  },
  ({ cutter, guide }, { depth, sheet }) => {
    const through = guide.kind === "bush" ? (sheet?.kind === "ok" ? sheet.thickness : 12) : 0;
    const limit = depth + through;
    const short = cutter.length < limit - 1e-6;
    const where = through > 0 ? ` under a template of ${plain(through)}` : "";
    return {
      ...{ status: short ? "refuse" : "pass", found: cutter.length, limit },
      why: short
        ? `${cutter.id} cuts ${plain(cutter.length)} mm where the recess is ${plain(depth)} deep${where}: take one that cuts ${plain(limit)} mm, or a thinner template`
        : `${cutter.id} cuts ${plain(cutter.length)} mm where the recess is ${plain(depth)} deep${where}`,
    };
  },
);

/** How near to a relief's foot a rounded corner counts to it, mm, and how deep it may be (shaped wood as the shop holds it). */
const [beside, most] = [2, 0.2];

/**
 * Whether the guide lets every corner of the kept wood come out. Beside the half circles that free a recess's corners nothing bears, and a little may be rounded off.
 * Found: how deep the deepest is rounded, mm.
 */
export const insideRounded: FixtureRule<OneOpening> = {
  name: "guide.large",
  of: ({ edge, recess, setUp }) => {
    const usual = {
      ...({ stake: "spoilage", unit: "mm", limit: 0.01 } as const),
      source:
        "the recess, compared with what this guide lets the cutter leave; 0.2 beside reliefs: default, confirm",
    };
    if (edge?.kind !== "ok" || setUp === null) return untried(usual, "edge.none");
    const feet = reliefFeet(recess);
    const places = edge.places.filter(({ kind }) => kind === "outward");
    const depthOf = (depth: number | null) => depth ?? setUp.guide.diameter;
    const isFoot = ({ x, y }: { readonly x: number; readonly y: number }) =>
      feet.some(({ at }) => Math.hypot(at.x - x, at.y - y) < beside);
    const open = places.filter((place) => !isFoot(place) || depthOf(place.depth) > most);
    const found = Math.max(0, ...(open.length > 0 ? open : places).map(({ depth }) => depthOf(depth)));
    const limit = open.length === 0 && places.length > 0 ? most : usual.limit;
    const at = open.map(({ x, y, depth }) => `at ${plain(x)}, ${plain(y)}, ${plain(depthOf(depth))} deep`);
    return {
      ...{ ...usual, status: open.length > 0 ? "refuse" : "pass", found, limit },
      why:
        open.length > 0
          ? `${setUp.guide.id} on ${setUp.cutter.id} rounds the wood ${at.join("; ")}: take a guide nearer to the cutter's ${plain(setUp.cutter.diameter)} mm`
          : places.length > 0
            ? `only ${places.length} corners beside reliefs come out rounded, ${plain(found)} deep, where nothing bears`
            : "every corner is brought out",
    };
  },
};
