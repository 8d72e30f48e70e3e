import type { SetUp } from "../../../workshop/guided/set-up.ts";
import { inMm } from "../../../workshop/sequence/work-step.ts";

/** The settings of a machine with its cutter and guides, in the order in which they are set: what, and what to. */
export function toolRows({ machine, cutter, guide, first, offset, speed }: SetUp): [string, string][] {
  const turns = machine.rotation === "ccw" ? "counter-clockwise" : "clockwise";
  const mount = machine.kind === "shaper" ? "shaper" : `router, ${machine.mount}`;
  const bound = {
    mark: "the tool's own mark",
    diameter: "charts for its diameter",
    rim: "70 m/s at the rim",
  };
  const before = first === null ? "" : `; first pass ${first.id} ${inMm(first.diameter)} (${first.measured})`;
  return [
    [
      "Machine",
      `${machine.id === mount ? mount : `${machine.id} (${mount})`}, spindle ${turns} seen from above the work`,
    ],
    ["Spindle speed", `${speed.rpm} rpm; borne ${inMm(speed.bound.rpm)} by ${bound[speed.bound.by]}`],
    ["Cutter", `${cutter.id} ${inMm(cutter.diameter)}, measured ${cutter.measured}, fed by hand`],
    ["Guide", `${guide.id} (${guide.kind}) ${inMm(guide.diameter)}, measured ${guide.measured}${before}`],
    ["D", `${signedMm(offset)}: half of what the cutter is larger than the guide`],
    ["Rim speed", `${inMm(speed.rim)} m/s`],
  ];
}

/** A length with its sign, two decimals. */
export function signedMm(value: number): string {
  return `${value > 0 ? "+" : ""}${value.toFixed(2)}`;
}

/** What is measured of a machine's tools before a set-up is used, and what it should be. */
export function toolsMeasured({ cutter, guide, speed }: SetUp): [string, string][] {
  return [
    [`Cutter ${cutter.id} across, today`, inMm(cutter.diameter)],
    [`Guide ${guide.id} across, today`, inMm(guide.diameter)],
    ["Speed read at the machine", `${speed.rpm} rpm`],
  ];
}

/** What a test strip must read, in scrap that is like the work in so much. */
export function stripWords({ offset }: SetUp, like: string): string {
  return `In scrap of the same ${like}, along a straight guided edge: from guided edge to cut edge it must read ${inMm(Math.abs(offset))} within 0.05 (G: default, confirm). The virtual cut tries the drawing, not the wood`;
}
