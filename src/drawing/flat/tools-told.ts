import type { SetUp } from "../../workshop/guided/set-up.ts";
import type { FixtureNotesInput } from "./fixture-notes.ts";

/** What the notes of a template tell of the machine, the tools and the speed that it is used with, and no more. */
export function toolsTold({
  machine,
  cutter,
  guide,
  first,
  offset,
  speed,
}: SetUp): Pick<FixtureNotesInput, "machine" | "cutter" | "guide" | "first" | "offset" | "speed"> {
  return {
    offset,
    machine: { id: machine.id, rotation: machine.rotation, moves: machine.moves },
    cutter: { id: cutter.id, diameter: cutter.diameter, measured: cutter.measured },
    guide: { id: guide.id, kind: guide.kind, diameter: guide.diameter, measured: guide.measured },
    first: first && { id: first.id, diameter: first.diameter, measured: first.measured },
    speed: { rpm: speed.rpm, rim: speed.rim },
  };
}
