import type { Side } from "../../order/side.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { boardReady } from "./board-steps.ts";
import { inMm, type WorkStep } from "./work-step.ts";

/** Parts become one: wings or body, then the board, then the neck is carved; frets go in when it is. */
export function joiningSteps(model: Model): WorkStep[] {
  return [...(model.spec.wings === null ? bodyJoined() : wingsJoined(model)), ...boardAndCarving(model)];
}

const none = { square: "nothing needs to be", thickness: null, setUp: null } as const;

/** The wing with the longer joint is glued first: the other's caul needs it in place. */
function wingsJoined({ instrument: { wings } }: Model): WorkStep[] {
  const [first, second]: readonly [Side, Side] =
    wings!.treble.joint.length > wings!.bass.joint.length ? ["treble", "bass"] : ["bass", "treble"];
  const own = { ...none, at: "bench", datum: "core's front", square: "core's front and back" } as const;
  return [
    {
      ...{ ...own, id: "wings.dry-fit", part: "neck" },
      what: "Fit both wings dry on their pins: joints closed, angles by the gauges, strips within the core",
      ...{ measure: "gap of each joint; splay, cant, rake", files: ["wing-angle-bass", "wing-angle-treble"] },
      needs: [
        { from: "neck.recesses", what: "the core, bored and recessed" },
        { from: "wing-bass.edges", what: "the bass wing" },
        { from: "wing-treble.edges", what: "the treble wing" },
      ],
    },
    {
      ...{ ...own, id: `wings.glue-${first}`, part: `wing-${first}` },
      what: `Glue the ${first} wing, clamped by its caul across the bare core, clamp line in the middle third of the joint; wipe it`,
      ...{ measure: "angles by the gauge while it is wet", files: [`caul-${first}`] },
      needs: [{ from: "wings.dry-fit", what: "both wings, fitted" }],
    },
    {
      ...{ ...own, id: `wings.glue-${second}`, part: `wing-${second}` },
      what: `Fit the ${second} wing again, glue it against the caul on the ${first} wing in place`,
      measure: "angles by the gauge while it is wet",
      files: [`caul-${second}`, `caul-${first}-in-place`],
      needs: [{ from: `wings.glue-${first}`, what: `the ${first} wing, glued and dry` }],
    },
  ];
}

function bodyJoined(): WorkStep[] {
  return [
    {
      ...{ ...none, id: "body.glue", part: "body", at: "bench", datum: "core's front" },
      what: "Fit the body on the core dry, then glue it; wipe it",
      ...{ measure: "gap all round; the body's front under the core's front", files: [] },
      needs: [
        { from: "neck.recesses", what: "the core, bored" },
        { from: "body.edges", what: "the body" },
      ],
    },
  ];
}

function joined({ spec, instrument: { wings } }: Model): string {
  if (spec.wings === null) return "body.glue";
  return wings!.treble.joint.length > wings!.bass.joint.length ? "wings.glue-bass" : "wings.glue-treble";
}

function boardAndCarving(model: Model): WorkStep[] {
  const { spec } = model;
  const of = (id: string) => dimensionOf(spec, id);
  const rods = of("rod.count") > 0 ? [{ from: "neck.rods", what: "the rods, glued in" }] : [];
  const stations = (["nut", "heel"] as const).map(
    (where) => `${inMm(of(`neck.thickness.${where}`))} at ${inMm(of(`neck.station.${where}`))}`,
  );
  const own = { ...none, part: "neck", at: "bench" } as const;
  return [
    {
      ...{ ...own, id: "board.glue", datum: "gluing surface of the board", square: "gluing surface" },
      what: "Glue the board on over its index pins, clamped on the sanding block or a caul, neck kept straight",
      ...{ measure: "straightness along the board when dry", files: ["fingerboard-side"] },
      needs: [
        { from: joined(model), what: "the core with what is joined to it" },
        ...rods,
        ...boardReady(model).map((from) => ({ from, what: "the board, ready" })),
      ],
    },
    {
      ...{ ...own, id: "neck.carve", datum: "board's face", square: "gluing surface" },
      what: "Saw off both ends' waste by hand; carve the neck to its sections, gauge by gauge, then between them",
      ...{ measure: `with the board: ${stations.join(", ")}`, files: ["neck-sections", "gauge-*"] },
      needs: [{ from: "board.glue", what: "the neck with its board" }],
    },
    ...(spec.frets === null
      ? []
      : [
          {
            ...{ ...own, id: "frets.set", part: "fingerboard", datum: "board's face" },
            what: `Press the frets in; ends inset by ${inMm(of("fret.inset"))}, bevelled at ${inMm(of("fret.bevel"))} degrees; level, crown, dress the ends`,
            ...{ measure: "straightedge along the crowns", files: ["fingerboard"] },
            needs: [
              { from: "neck.carve", what: "the neck, carved" },
              { from: "bought", what: "fret wire" },
            ],
          },
        ]),
  ];
}
