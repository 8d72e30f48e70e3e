import type { Spec } from "../order/spec.ts";
import { usual } from "../order/usual-tolerance.ts";
import { type Dimension, force, length } from "./dimension.ts";

/** How far two shear stresses of so few MPa may differ before it counts. */
const shear = 0.05;

/** How far two coefficients of friction may differ before it counts. */
const friction = 0.005;

/** What the strings do to bridge and tailpiece, and what they bear themselves. */
export function forceDimensions(spec: Spec): Dimension[] {
  return [...ofStrings(spec), ...onBridge, ...foot(spec), ...ofSet, ...onTailpiece];
}

function ofStrings({ strings }: Spec): Dimension[] {
  const wires = strings.filter(({ strength }) => strength !== null);
  return [
    ...strings.flatMap(({ name }, i): Dimension[] => [
      force("bridge", `string.${name}.load`, `${name}: load square to the core's front`, ({ forces }) => {
        return forces.bridgeLoad.strings[i]!.load;
      }),
      force(
        "bridge",
        `string.${name}.lean`,
        `${name}: pull along the core, positive to the tail`,
        (model) => {
          return model.forces.bridgeLoad.strings[i]!.lean;
        },
      ),
    ]),
    ...wires.map(({ name }, i): Dimension => {
      const label = `${name}: stress of its wire at pitch`;
      const of: Dimension["of"] = ({ instrument }) => instrument.wires[i]!.stress;
      return {
        id: `string.${name}.stress`,
        ...{ label, unit: "MPa", part: "strings", tolerance: usual.stress, of },
      };
    }),
  ];
}

const onBridge: readonly Dimension[] = [
  force("bridge", "bridge.load", "Strings' load on the bridge, square to the core's front", ({ forces }) => {
    return forces.bridgeLoad.load;
  }),
  force("bridge", "bridge.lean", "Strings' pull on it along the core, positive to the tail", ({ forces }) => {
    return forces.bridgeLoad.lean;
  }),
  force("bridge", "bridge.side", "Strings' pull on it across, positive to the treble side", ({ forces }) => {
    return forces.bridgeLoad.side;
  }),
  {
    ...{ id: "bridge.friction", label: "Least friction in a notch that keeps its string in place" },
    ...{ unit: "", part: "bridge", tolerance: friction, of: ({ forces }) => forces.bridgeLoad.friction },
  },
];

/** What there is of a bridge by the way it stands: its balance on its foot, or the screws of a saddle. */
function foot({ bridgeFoot }: Spec): Dimension[] {
  if (bridgeFoot.kind === "saddle") {
    if (bridgeFoot.screws.length === 0) return [];
    const label = "Shear stress of the saddle's screws, without friction at its foot";
    const of: Dimension["of"] = ({ forces }) => forces.screwShear!;
    return [{ id: "bridge.shear", label, unit: "MPa", part: "bridge", tolerance: shear, of }];
  }
  return [
    length("bridge", "bridge.resultant", "Strings' resultant ahead of the foot's middle", ({ forces }) => {
      return forces.resultant!;
    }),
    force("bridge", "bridge.load.bass", "Load of the bass foot", ({ forces }) => forces.footLoads!.bass),
    force("bridge", "bridge.load.treble", "Load of the treble foot", ({ forces }) => {
      return forces.footLoads!.treble;
    }),
  ];
}

const ofSet: readonly Dimension[] = [
  force("strings", "strings.tension.total", "Tension of all strings together", ({ forces }) => {
    return forces.balance.total;
  }),
  force("strings", "strings.tension.spread", "Greatest tension of a string less the least", ({ forces }) => {
    return forces.balance.spread;
  }),
  ...(["nut", "bridge"] as const).map((where) => {
    const label = `Middle of the tension at the ${where}, from the centreline to the treble side`;
    return length("strings", `strings.tension.centre.${where}`, label, ({ forces }) => {
      return forces.balance.centre[where];
    });
  }),
];

const onTailpiece: readonly Dimension[] = [
  force(
    "tailpiece",
    "tailpiece.pull",
    "Strings' pull on its anchor along the core, positive to the nut",
    (model) => {
      return model.forces.bridgeLoad.anchor.pull;
    },
  ),
  force("tailpiece", "tailpiece.lift", "Strings' pull on its anchor square out of the core", ({ forces }) => {
    return forces.bridgeLoad.anchor.lift;
  }),
];
