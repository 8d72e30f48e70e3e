import { fitCircle } from "../../geometry/fit-circle.ts";
import { intoCore } from "../core/frame.ts";
import { boardRadius } from "../fingerboard/surface.ts";
import { boardWidth } from "../fingerboard/taper.ts";
import { type Look, mm, unless } from "./at-odds.ts";

/** Lengths along the instrument that overlap or leave no room. */
export const lengthsAtOdds: Look = (of) => {
  const [length, board, start, end] = ["string.length", "fingerboard.length", "core.start", "core.end"].map(
    of,
  ) as [number, number, number, number];
  const foot = of("bridge.foot.thickness");
  return [
    ...unless(board < length - foot, ["fingerboard.length", "string.length"], {
      found: `a board of ${mm(board)} under strings of ${mm(length)}`,
      allowed: `a board shorter than ${mm(length - foot)}, so that the bridge stands clear of it`,
      hint: "shorten fingerboard.length or lengthen string.length",
    }),
    ...unless(start < length, ["core.start", "string.length"], {
      found: `a core that starts at ${mm(start)}`,
      allowed: `a start before the bridge at ${mm(length)}`,
      hint: "move core.start toward the nut",
    }),
    ...unless(end > length, ["core.end", "string.length"], {
      found: `a core that ends at ${mm(end)}`,
      allowed: `an end behind the bridge at ${mm(length)}`,
      hint: "move core.end toward the tail",
    }),
    ...unless(of("bridge.foot.width") <= of("core.width"), ["bridge.foot.width", "core.width"], {
      found: `a foot of ${mm(of("bridge.foot.width"))} on a core of ${mm(of("core.width"))}`,
      allowed: "a foot no wider than the core that it stands on",
      hint: "narrow bridge.foot.width or widen core.width",
    }),
    ...unless(of("bridge.top.thickness") <= foot, ["bridge.top.thickness", "bridge.foot.thickness"], {
      found: `a crown ${mm(of("bridge.top.thickness"))} thick on a foot of ${mm(foot)}`,
      allowed: "a crown no thicker than the foot",
      hint: "thin bridge.top.thickness or thicken bridge.foot.thickness",
    }),
  ];
};

/** Strings that take up more than their spread. */
export const spacingAtOdds: Look = (_, { layout }) =>
  unless(layout.bridgeGap > 0, ["bridge.spread"], {
    found: `a spread of ${mm(layout.bridgeSpread)}, which leaves ${mm(layout.bridgeGap)} between the strings`,
    allowed: `more than ${mm(layout.bridgeSpread - layout.bridgeGap * (layout.bridge.length - 1))}, the strings' own`,
    hint: "widen bridge.spread or use fewer strings",
  });

/** A board's surface that can't be made. */
export const surfaceAtOdds: Look = (of, { taper, surface }) => {
  const short = [0, taper.length].map((x) => {
    const half = boardWidth(taper, x) / 2;
    return { half, least: (half * of("fingerboard.radius")) / boardRadius(surface, x) };
  });
  const { half, least } = short.reduce((worst, at) => (at.least > worst.least ? at : worst));
  return [
    ...unless(of("fingerboard.radius") > least, ["fingerboard.radius", "fingerboard.margin.end"], {
      found: `a radius of ${mm(of("fingerboard.radius"))} on a board ${mm(2 * half)} wide`,
      allowed: `a radius over ${mm(least)}, so that it is over half the board's width from end to end`,
      hint: "raise fingerboard.radius",
    }),
    ...unless(taper.end >= taper.nut, ["fingerboard.margin.end", "nut.margin", "bridge.spread"], {
      found: `a board ${mm(taper.nut)} wide at the nut and ${mm(taper.end)} at its end`,
      allowed: "a board that is no narrower at its end than at the nut",
      hint: "widen bridge.spread or fingerboard.margin.end, or narrow nut.gap or nut.margin",
    }),
  ];
};

/** Strings that don't lie on an arch. */
export const crownsAtOdds: Look = (of, { heights, layout, taper }) => {
  const reach = { nut: taper.nut / 2, bridge: layout.bridgeSpread / 2 + of("bridge.margin") };
  return (["nut", "bridge"] as const).flatMap((where) => {
    const fit = fitCircle(layout[where].map((x, i) => ({ x, y: heights[where][i]! })));
    const arched = fit.kind === "ok" && fit.centre.y < Math.min(...heights[where]);
    return unless(arched && fit.radius > reach[where] + Math.abs(fit.centre.x), ["fingerboard.radius"], {
      found: arched
        ? `a crown of radius ${mm(fit.radius)} at the ${where}`
        : `strings that don't arch at the ${where}`,
      allowed: `a crown of more than ${mm(reach[where])}, half the ${where}'s width, arched upward`,
      hint: "change fingerboard.radius, or bring the clearances of high and low string nearer to each other",
    });
  });
};

/** Strings that would not press on the bridge or not reach the tailpiece. */
export const heightsAtOdds: Look = (of, { heights, core }) => {
  const contacts = heights.bridge.map((z) => intoCore(core, { x: of("string.length"), z }));
  const [height, after] = [of("tailpiece.height"), of("afterlength")];
  const [lowest, highest] = [
    Math.min(...contacts.map(({ z }) => z)),
    Math.max(...contacts.map(({ z }) => z)),
  ];
  const exits = Math.max(
    ...contacts.map(({ x, z }) => x + Math.sqrt(Math.max(after ** 2 - (z - height) ** 2, 0))),
  );
  const room = (of("core.end") - core.start) / Math.cos((core.slope * Math.PI) / 180);
  return [
    ...unless(height < lowest, ["tailpiece.height", "string.clearance.end.high"], {
      found: `exits ${mm(height)} over the core under strings ${mm(lowest)} over it at the bridge`,
      allowed: `exits under ${mm(lowest)}, so that the strings press on the bridge`,
      hint: "lower tailpiece.height",
    }),
    ...unless(after > highest - height, ["afterlength", "tailpiece.height"], {
      found: `an afterlength of ${mm(after)} that must fall ${mm(highest - height)}`,
      allowed: `more than ${mm(highest - height)}`,
      hint: "lengthen afterlength or raise tailpiece.height",
    }),
    ...unless(exits < room, ["afterlength", "core.end"], {
      found: `exits ${mm(exits)} along a core that is ${mm(room)} long`,
      allowed: "exits before the core's end",
      hint: "shorten afterlength or move core.end toward the tail",
    }),
  ];
};
