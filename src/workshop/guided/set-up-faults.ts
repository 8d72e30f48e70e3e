import type { Cutter } from "../../order/shop.ts";
import { passDepth } from "./depth-passes.ts";
import { type Fault, plain } from "./fault.ts";
import { firstDepth, lengthWanted } from "./into-recess.ts";
import { removalFaults } from "./passes.ts";
import { bushClearance, type CutWanted, overLength, type SetUp, templateThickness } from "./set-up.ts";
import { rimSpeeds } from "./spindle-speed.ts";

/** Everything that is wrong with a set-up for a cut. `owned` is every cutter of the shop that such a cut can be made with: the largest that would do is named. */
export function setUpFaults(setUp: SetUp, wanted: CutWanted, owned: readonly Cutter[]): Fault[] {
  const { machine } = setUp;
  const { recess } = wanted;
  const most = machine.kind === "shaper" ? (machine["first-pass"] ?? null) : null;
  const always = [
    ...(recess === undefined ? shortFaults(setUp, wanted) : recessFaults(setUp, recess)),
    ...bendFaults(setUp, wanted, owned),
    ...guideFaults(setUp),
    ...speedFaults(setUp),
  ];
  if (recess !== undefined) return always;
  return [...always, ...removalFaults(machine.kind, setUp.passes, most)];
}

function shortFaults({ cutter }: SetUp, { thickness }: CutWanted): Fault[] {
  const limit = thickness + overLength;
  if (cutter.length >= limit - 1e-6) return [];
  const why = `${cutter.id} cuts ${plain(cutter.length)} mm of ${plain(thickness)}: take one that cuts ${plain(limit)} mm, or saw to ${plain(cutter.length - overLength)} mm first and pack the work up`;
  return [{ check: "cutter.short", found: cutter.length, limit, unit: "mm", why }];
}

/** Whether a cutter reaches a recess's floor, and whether a bearing on its shank rides on the template from the first pass on. */
function recessFaults(setUp: SetUp, recess: NonNullable<CutWanted["recess"]>): Fault[] {
  const { cutter, guide } = setUp;
  const limit = lengthWanted(guide.kind, recess);
  const faults: Fault[] = [];
  if (cutter.length < limit - 1e-6) {
    const through = limit > recess.depth ? ` and a template of ${plain(recess.template)}` : "";
    const why = `${cutter.id} cuts ${plain(cutter.length)} mm where a recess is ${plain(recess.depth)} deep${through}: take one that cuts ${plain(limit)} mm`;
    faults.push({ check: "cutter.short", found: cutter.length, limit, unit: "mm", why });
  }
  const first = firstDepth(setUp, recess.template);
  const pass = passDepth(cutter.diameter);
  if (first > pass + 1e-6) {
    const why = `no more than half of ${guide.id} bears on a template ${plain(recess.template)} thick before ${cutter.id} is ${plain(first)} deep: take one that cuts no more than ${plain(cutter.length - first + pass)} mm, or a bush`;
    faults.push({ check: "guide.bearing", found: first, limit: pass, unit: "mm", why });
  }
  return faults;
}

function bendFaults({ cutter, guide, offset }: SetUp, wanted: CutWanted, owned: readonly Cutter[]): Fault[] {
  const { hollow, outward } = wanted;
  const faults: Fault[] = [];
  if (hollow !== null && cutter.diameter / 2 > hollow + 1e-6) {
    const why = `${cutter.id}, ${plain(cutter.diameter)} mm, can't touch a hollow of radius ${plain(hollow)}: ${wouldDo(2 * hollow, wanted, owned)}`;
    faults.push({ check: "cutter.large", found: cutter.diameter, limit: 2 * hollow, unit: "mm", why });
  }
  if (outward !== null && -offset > outward + 1e-6) {
    const limit = cutter.diameter + 2 * outward;
    const why = `${guide.id} on ${cutter.id} rounds what bends outward tighter than ${plain(-offset)} mm: take a guide of ${plain(limit)} mm or less, or mark the edge finish: hand`;
    faults.push({ check: "guide.large", found: guide.diameter, limit, unit: "mm", why });
  }
  return faults;
}

/** Which cutter would get into a hollow: the largest owned one, or which to get. */
function wouldDo(most: number, { kind, thickness, recess }: CutWanted, owned: readonly Cutter[]): string {
  const wanted = recess === undefined ? thickness + overLength : lengthWanted("bush", recess);
  const small = owned
    .filter(({ diameter }) => diameter <= most + 1e-6)
    .sort((a, b) => b.diameter - a.diameter || b.length - a.length || (a.id < b.id ? -1 : 1));
  const largest = small.find(({ length }) => length >= wanted - 1e-6);
  if (largest !== undefined)
    return `the largest owned cutter that would do is ${largest.id}, ${plain(largest.diameter)} mm, on ${largest.fits.join(" or ")}`;
  const near = small[0];
  const have =
    near === undefined
      ? `the shop owns none for a ${kind}`
      : `of those owned ${near.id} is the largest, but too short`;
  return most > 0
    ? `a cutter of ${plain(most)} mm or less would do, ${have}`
    : "no cutter gets into a corner: give it a radius, or mark the edge finish: hand";
}

function guideFaults({ machine, cutter, guide }: SetUp): Fault[] {
  const faults: Fault[] = [];
  if (cutter.feed === "mechanical")
    faults.push({
      ...{ check: "cutter.feed", found: 0, limit: 1, unit: "" },
      why: `${cutter.id} is marked for mechanical feed, and ${machine.id} is fed by hand: take a cutter marked manual`,
    });
  if (guide.kind === "bush" && guide.diameter < cutter.diameter + bushClearance - 1e-6)
    faults.push({
      ...{
        check: "guide.bearing",
        found: guide.diameter,
        limit: cutter.diameter + bushClearance,
        unit: "mm",
      },
      why: `${cutter.id} doesn't clear ${guide.id}: take a bush over ${plain(cutter.diameter + bushClearance)} mm across, and measure its bore`,
    });
  const most = 2 * templateThickness;
  if (guide.kind !== "bush" && guide.height >= most)
    faults.push({
      ...{ check: "guide.bearing", found: templateThickness, limit: guide.height / 2, unit: "mm" },
      why: `no more than half of ${guide.id}, ${plain(guide.height)} mm high, bears on a template edge ${templateThickness} mm thick: take a thinner guide`,
    });
  return faults;
}

function speedFaults({ machine, cutter, speed: { rpm, bound, rim } }: SetUp): Fault[] {
  const faults: Fault[] = [];
  const mark = cutter["most-speed"];
  if (mark === undefined && machine.kind === "shaper")
    faults.push({
      ...{ check: "speed.mark", found: rpm, limit: 0, unit: "rpm" },
      why: `${cutter.id} has no speed marked on it: a shaper's tool that doesn't say what it bears isn't run; write its mark as most-speed`,
    });
  else if (rpm > bound.rpm + 1e-6 && bound.by !== "rim")
    faults.push({
      ...{ check: "speed.mark", found: rpm, limit: bound.rpm, unit: "rpm" },
      why: `the lowest speed of ${machine.id} is ${rpm} rpm, over the ${plain(bound.rpm)} that ${bound.by === "mark" ? `is marked on ${cutter.id}` : `the charts give for ${plain(cutter.diameter)} mm`}: take a smaller cutter, or a machine that runs at ${plain(bound.rpm)} or less`,
    });
  if (rim > rimSpeeds.most + 1e-6)
    faults.push({
      ...{ check: "rim-speed", found: rim, limit: rimSpeeds.most, unit: "m/s" },
      why: `the rim of ${cutter.id} runs at ${plain(rim)} m/s at the lowest speed of ${machine.id}: take one of ${plain((rimSpeeds.most * 60_000) / (Math.PI * rpm))} mm or less`,
    });
  return faults;
}
