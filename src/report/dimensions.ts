import { boardTop } from "../instrument/fingerboard/surface.ts";
import { boardWidth } from "../instrument/fingerboard/taper.ts";
import { catalogue } from "../order/catalogue.ts";
import { kinds } from "../order/quantity.ts";
import type { Spec } from "../order/spec.ts";
import { usual } from "../order/usual-tolerance.ts";
import { blankDimensions } from "./blank-dimensions.ts";
import { boardDimensions } from "./board-dimensions.ts";
import { bodyDimensions } from "./body-dimensions.ts";
import { bowDimensions } from "./bow-dimensions.ts";
import { bridgeDimensions } from "./bridge-dimensions.ts";
import { clearDimensions } from "./clear-dimensions.ts";
import { angle, type Dimension, length } from "./dimension.ts";
import { fixtureDimensions } from "./fixture-dimensions.ts";
import { forceDimensions } from "./force-dimensions.ts";
import { fretDimensions } from "./fret-dimensions.ts";
import { inlayDimensions } from "./inlay-dimensions.ts";
import { insideDimensions } from "./inside-dimensions.ts";
import { massDimensions } from "./mass-dimensions.ts";
import { neckDimensions } from "./neck-dimensions.ts";
import { nutDimensions } from "./nut-dimensions.ts";
import { recessDimensions } from "./recess-dimensions.ts";
import { restDimensions } from "./rest-dimensions.ts";
import { tailpieceDimensions } from "./tailpiece-dimensions.ts";
import { veneerDimensions } from "./veneer-dimensions.ts";
import { wingDimensions } from "./wing-dimensions.ts";

/** Every dimension that a report of this spec has, in no particular order. */
export function dimensionsOf(spec: Spec): Dimension[] {
  return [
    ...[...settableDimensions(spec), ...stringDimensions(spec), ...spacing, ...heights],
    ...[...boardOutlineDimensions(spec), ...boardDimensions(spec), ...fretDimensions(spec)],
    ...[...inlayDimensions(spec), ...neckDimensions],
    ...[
      ...tailpieceDimensions(spec),
      ...wingDimensions(spec),
      ...bodyDimensions(spec),
      ...recessDimensions(spec),
      ...clearDimensions(spec),
    ],
    ...[...fixtureDimensions(spec), ...blankDimensions(spec)],
    ...insideDimensions(spec),
    ...[...bridgeDimensions, ...nutDimensions(spec)],
    ...[
      ...forceDimensions(spec),
      ...bowDimensions(spec),
      ...massDimensions(spec),
      ...restDimensions(spec),
      ...veneerDimensions(spec),
    ],
  ];
}

/** What a bare head has none of: what is set of it changes nothing, so no report tells it. */
const ofTunersOnHead: readonly string[] = ["head.column", "tuner.post"];

function settableDimensions({ values, tuners }: Spec): Dimension[] {
  const used = catalogue.filter(
    ({ id }) => values[id] !== undefined && (tuners !== "tail" || !ofTunersOnHead.includes(id)),
  );
  return used.map(({ id, label, kind, part }) => {
    const { tolerance } = values[id]!;
    const unit = kinds[kind].unit as Dimension["unit"];
    return { id, label, unit, part, tolerance, of: ({ spec }) => spec.values[id]!.value };
  });
}

/** What a string's own numbers rest on, as its file marks them, for whoever reads a number that follows from them. */
const marks: { readonly [mark: string]: string } = {
  ...{
    S: "a published source",
    G: "general trade knowledge: default, confirm",
    C: "computed: default, confirm",
  },
  M: "the string maker's own figure",
};

function stringDimensions({ strings }: Spec): Dimension[] {
  return strings.flatMap(({ name, marks: of }, i): Dimension[] => {
    const diameter = `diameter: ${marks[of.diameter] ?? "no mark"}`;
    const mass = `mass: ${marks[of.mass] ?? "no mark"}`;
    const offset = "from the centreline to the treble side";
    return [
      length(
        "strings",
        `string.${name}.length`,
        `${name}: true length from nut to bridge`,
        ({ instrument }) => {
          return instrument.runs.lengths[i]!;
        },
      ),
      length("strings", `string.${name}.offset.nut`, `${name}: at the nut, ${offset}`, ({ instrument }) => {
        return instrument.layout.nut[i]!;
      }),
      length(
        "strings",
        `string.${name}.offset.bridge`,
        `${name}: at the bridge, ${offset}`,
        ({ instrument }) => {
          return instrument.layout.bridge[i]!;
        },
      ),
      length(
        "nut",
        `nut.${name}.bottom`,
        `${name}: slot's bottom over the nut's base (${diameter})`,
        ({ instrument }) => {
          return instrument.nut.slots[i]!.bottom;
        },
      ),
      length(
        "bridge",
        `bridge.${name}.bottom`,
        `${name}: notch's bottom up the bridge's face (${diameter})`,
        (model) => {
          return model.instrument.crownFace.notches[i]!.bottom;
        },
      ),
      {
        ...{
          id: `string.${name}.tension`,
          label: `${name}: tension at pitch (${mass})`,
          unit: "N",
          part: "strings",
        },
        ...{ tolerance: usual.force, of: ({ forces }) => forces.strings.tensions[i]! },
      },
      {
        ...{ id: `string.${name}.pitch`, label: `${name}: pitch`, unit: "Hz", part: "strings" },
        ...{ tolerance: usual.pitch, of: ({ forces }) => forces.strings.pitches[i]! },
      },
    ];
  });
}

const spacing: readonly Dimension[] = [
  length(
    "nut",
    "nut.spread",
    "Outer strings' centres apart at the nut",
    ({ instrument }) => instrument.layout.nutSpread,
  ),
  length(
    "nut",
    "nut.pitch",
    "Mean distance of neighbouring centres at the nut",
    ({ instrument: { layout } }) => {
      return layout.nutSpread / (layout.nut.length - 1);
    },
  ),
  length(
    "nut",
    "nut.width",
    "Width of the nut and of the board there",
    ({ instrument }) => instrument.taper.nut,
  ),
  length("bridge", "bridge.gap", "Gap between neighbouring strings at the bridge", ({ instrument }) => {
    return instrument.layout.bridgeGap;
  }),
  length(
    "bridge",
    "bridge.pitch",
    "Mean distance of neighbouring centres at the bridge",
    ({ instrument: { layout } }) => {
      return layout.bridgeSpread / (layout.bridge.length - 1);
    },
  ),
];

const heights: readonly Dimension[] = [
  length("nut", "nut.height", "Height of the nut's blank", ({ instrument }) => instrument.nut.height),
  length(
    "bridge",
    "bridge.radius",
    "Radius of the crown through the strings",
    ({ instrument }) => instrument.crown.radius,
  ),
  length("bridge", "bridge.top", "Top of the crown over z = 0", ({ instrument }) => instrument.crown.top),
  length("bridge", "bridge.height", "Top of the crown, square from the core's front", ({ instrument }) => {
    return instrument.crown.height;
  }),
  angle(
    "strings",
    "string.angle",
    "Strings' rise to the bridge, seen from the side, to z = 0",
    ({ forces }) => {
      return forces.angles.rise;
    },
  ),
  angle(
    "tailpiece",
    "tailpiece.angle",
    "Strings' fall to the tailpiece, seen from the side, to z = 0",
    ({ forces }) => {
      return forces.angles.fall;
    },
  ),
  angle(
    "bridge",
    "bridge.included-angle",
    "Angle that the strings include at the bridge, from the side",
    ({ forces }) => {
      return forces.angles.included;
    },
  ),
];

function boardOutlineDimensions({ stations }: Spec): Dimension[] {
  const part = "fingerboard";
  const ends: Dimension[] = [
    length(part, "fingerboard.width.nut", "Width at the nut", ({ instrument }) => instrument.taper.nut),
    length(part, "fingerboard.width.end", "Width at its end", ({ instrument }) => instrument.taper.end),
    length(
      part,
      "fingerboard.thickness.nut",
      "Thickness on the centreline at the nut",
      ({ instrument: { surface } }) => {
        return boardTop(surface, 0, 0);
      },
    ),
    length(
      part,
      "fingerboard.thickness.end",
      "Thickness on the centreline at its end",
      ({ instrument: { surface } }) => {
        return boardTop(surface, surface.taper.length, 0);
      },
    ),
  ];
  const between = stations.fingerboard.map((x) =>
    length(part, `fingerboard.width.${x}`, `Width ${x} mm from the nut`, ({ instrument }) => {
      return boardWidth(instrument.taper, x);
    }),
  );
  return [...ends, ...between];
}
