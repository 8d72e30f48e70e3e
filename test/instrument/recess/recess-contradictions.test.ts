import { describe, expect, it } from "vitest";
import { contradictions } from "../../../src/instrument/contradictions.ts";
import { instrument } from "../../../src/instrument/instrument.ts";
import type { Spec } from "../../../src/order/spec.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { forced } from "../../forced.ts";
import { specOf } from "../../samples.ts";
import { changed, sedge, specWith } from "./changed-design.ts";

const store = memoryStore();
const made = (spec: Spec) => instrument(spec, store);
const problemsOf = (spec: Spec) => contradictions(spec, made(spec));

/** The line of the design on which some words stand. */
const lineOf = (words: string, text = sedge) => text.slice(0, text.indexOf(words)).split("\n").length;

type Case = [what: string, from: string, to: string, name: string, found: RegExp, hint: RegExp];

describe("recesses that can't be", () => {
  const battery = "holds: battery-9v, cover: yes }";
  const jack = "at: [0.7419, 0.5516]";
  it.each<Case>([
    [
      "in a part that the design hasn't",
      "{ id: battery, in: neck",
      "{ id: battery, in: body",
      "recess.battery",
      /a recess in "body"/,
      /part that this design has/,
    ],
    [
      "for an item that isn't known",
      "holds: battery-9v",
      "holds: battery-9w",
      "recesses.list.0.holds",
      /battery-9w/,
      /did you mean battery-9v/,
    ],
    [
      "for a jack without a way out",
      "turn: 34 deg, out: 124 deg",
      "turn: 34 deg",
      "recess.jack",
      /no way out for jack-6.35/,
      /add out/,
    ],
    [
      "for a battery with a way out",
      battery,
      `out: 0 deg, ${battery}`,
      "recess.battery",
      /a way out of a recess for battery-9v/,
      /remove out/,
    ],
    ["of one name", "{ id: preamp,", "{ id: battery,", "battery", /"battery"/, /another name/],
    [
      "with a bore from a recess that isn't there",
      "from: battery, to: preamp",
      "from: batery, to: preamp",
      "bore.battery-wire",
      /batery/,
      /did you mean battery/,
    ],
    [
      "with a bore to where it began",
      "from: battery, to: preamp",
      "from: preamp, to: preamp",
      "bore.battery-wire",
      /preamp/,
      /another recess/,
    ],
    [
      "with a bore of nothing",
      "to: jack, size: 4 mm",
      "to: jack, size: 0 mm",
      "bore.jack-wire",
      /0 mm/,
      /diameter/,
    ],
  ])("%s are told where they are written", (_, from, to, name, found, hint) => {
    const spec = changed(from, to);
    expect(spec.ok).toBe(false);
    const problem = (spec.ok ? [] : spec.problems).find((one) => one.name === name)!;
    expect(problem.found).toMatch(found);
    expect(problem.hint).toMatch(hint);
    expect(problem.position.file).toBe("sedge.yaml");
    expect(problem.position.line).toBe(lineOf(from));
  });

  const pin = "recess battery and pin";
  it.each<Case>([
    [
      "out of the rim",
      jack,
      "at: [0.7419, 0.75]",
      "recess.jack",
      /no wood between recess jack and the wing's rim/,
      /move recess jack inward by/,
    ],
    [
      "into the joint",
      jack,
      "at: [0.7419, 0.2]",
      "recess.jack",
      /recess jack and the joint/,
      /move recess jack out by/,
    ],
    [
      "into a pin",
      "plus: -198 mm }, 0 mm], holds: battery-9v",
      "plus: -230 mm }, 0 mm], holds: battery-9v",
      "recess.battery",
      new RegExp(pin),
      /away from pin/,
    ],
    [
      "into each other",
      "plus: -198 mm }, 0 mm], holds: battery-9v",
      "plus: -170 mm }, 0 mm], holds: battery-9v",
      "recess.preamp",
      /preamp and recess battery: they overlap/,
      /further apart/,
    ],
    [
      "out of the core's side",
      "plus: -198 mm }, 0 mm], holds: battery-9v",
      "plus: -198 mm }, 9 mm], holds: battery-9v",
      "recess.battery",
      /recess battery and the core's sides/,
      /inward by|turn it/,
    ],
    [
      "with a bore that misses its recess",
      "to: jack, size: 4 mm, height: 3.5 mm",
      "to: jack, size: 4 mm, height: 30 mm",
      "bore.jack-wire",
      /bore jack-wire coming .* over the floor of recess jack/,
      /lower the height of bore jack-wire/,
    ],
    [
      "with a bore beside its recess",
      "plus: -140 mm }, 0 mm], holds: preamplifier",
      "plus: -120 mm }, 0 mm], holds: preamplifier",
      "bore.pickup-wire",
      /beside recess preamp/,
      /move recess preamp under the bridge/,
    ],
    [
      "with a bore through a pin",
      "height: 6.5 mm, begins: 2.2 mm",
      "height: 2.6 mm, begins: 2.6 mm",
      "bore.volume-wire",
      /bore volume-wire and pin a of the treble wing/,
      /height/,
    ],
    [
      "with a way out into the joint",
      "turn: 34 deg, out: 124 deg",
      "turn: 34 deg, out: -90 deg",
      "recess.jack",
      /way out leading into the joint/,
      /turn out of recess jack/,
    ],
    [
      "under the bridge with screws' holes wider than their ledge",
      "cover.screw: { value: 2.5 mm, least: 2.2 mm, most: 2.8 mm",
      "cover.screw: { value: 4.5 mm, least: 2.2 mm, most: 4.8 mm",
      "cover.ledge",
      /a ledge of 5 mm/,
      /raise cover.ledge to 5.5 mm/,
    ],
  ])("%s are told at their place in the design", (_, from, to, name, found, hint) => {
    const problems = problemsOf(specWith(from, to));
    const problem = problems.find((one) => found.test(one.found));
    expect(problems.map((one) => one.found).join("\n")).toMatch(found);
    expect(problem!.hint).toMatch(hint);
    expect(problem!.position.file).toBe("sedge.yaml");
    const [kind, id] = name.split(".");
    if (kind !== "cover")
      expect(problem!.position.line).toBe(lineOf(`{ id: ${id},`, sedge.replace(from, to)));
  });

  it.each([
    ["cover.thickness", 11, /recess battery and the face opposite/, /raise core.depth to 30\.65 mm/],
    ["wing.bass.thickness", 15, /recess jack and the face opposite/, /raise wing.bass.thickness to/],
    ["recess.corner", 12, /recess .* too small for two corners of 12 mm/, /lower recess.corner to less than/],
    ["cover.lip", 0.5, /a lip of 0.5 mm/, /raise cover.lip to 0.94 mm/],
  ] as const)(
    "by an order's %s of %d are told at that, with the number to move",
    (id, value, found, hint) => {
      const problems = problemsOf(forced(specOf("sedge", 4), { [id]: value })).filter((one) =>
        found.test(one.found),
      );
      expect(problems.length).toBeGreaterThan(0);
      for (const problem of problems) {
        expect(problem).toMatchObject({ name: id, position: { file: "order.yaml" } });
        expect(problem.hint).toMatch(hint);
      }
    },
  );
});
