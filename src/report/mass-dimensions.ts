import { dimensionOf, type Spec } from "../order/spec.ts";
import { usual } from "../order/usual-tolerance.ts";
import type { Model } from "../workshop/model.ts";
import { type Dimension, mass } from "./dimension.ts";

const whole = "instrument";

/** Parts that weigh a few grams. */
const lights: readonly string[] = ["bridge", "nut", "tailpiece"];

function weighsLittle(name: string): boolean {
  return lights.includes(name) || name.startsWith("cover-");
}

/** A mass of something that weighs little: a gram off is much there. */
function light(dimension: Dimension): Dimension {
  return { ...dimension, tolerance: usual.lightMass };
}

/** What each part weighs and takes of space, and the whole instrument's mass and balance. */
export function massDimensions({ values, wings, body, strings, recesses }: Spec): Dimension[] {
  const rods = values["rod.count"]!.value > 0 ? [{ name: "rods", part: "neck" }] : [];
  const sides = [...(wings === null ? [] : ["wing-bass", "wing-treble"]), ...(body === null ? [] : ["body"])];
  const own = ["neck", "fingerboard", "bridge", "nut", "tailpiece", ...sides].map((name) => {
    return { name, part: name };
  });
  const covers = recesses
    .filter(({ cover }) => cover)
    .map(({ id }) => ({ name: `cover-${id}`, part: "cover" }));
  return [
    ...[...own, ...covers, ...rods].flatMap(({ name, part }) => partDimensions(name, part)),
    ...strings.map(({ name }) =>
      light(
        mass("strings", `string.${name}.mass`, `${name}: mass from head to tailpiece`, ({ masses }) => {
          return masses.strings.find((piece) => piece.name === `string-${name}`)!.mass;
        }),
      ),
    ),
    mass(whole, "hardware.mass", "Mass of what the design screws on (default, confirm)", ({ masses }) =>
      masses.hardware.reduce((sum, piece) => sum + piece.mass, 0),
    ),
    ...balance,
  ];
}

function partDimensions(name: string, part: string): Dimension[] {
  const found = ({ masses }: Model) => {
    const weighed = masses.parts.find((one) => one.name === name);
    if (weighed === undefined) throw new RangeError(`no part ${name} is weighed`);
    return weighed;
  };
  const label = `Mass of the finished ${name}, of its wood's usual density`;
  const weight = mass(part, `${name}.mass`, label, (model) => found(model).mass);
  return [
    weighsLittle(name) ? light(weight) : weight,
    {
      ...{ id: `${name}.volume`, label: `Volume of the finished ${name}`, unit: "cm³", part },
      ...{ tolerance: weighsLittle(name) ? usual.lightMass : usual.volume },
      ...{ of: (model) => found(model).volume / 1000 },
    },
  ];
}

const middle = (axis: "x" | "y" | "z", where: string): Dimension => ({
  ...{ id: `balance.${axis}`, label: `Middle of the whole mass, ${where}`, unit: "mm", part: whole },
  ...{ tolerance: usual.balance, of: ({ masses }) => masses.whole.centre[axis] },
});

const balance: readonly Dimension[] = [
  mass(whole, "mass.total", "Mass of the parts, the strings and what is screwed on", ({ masses }) => {
    return masses.whole.mass;
  }),
  middle("x", "from the nut"),
  middle("y", "from the centreline to the treble side"),
  middle("z", "out of z = 0"),
  {
    ...{
      id: "balance.hold",
      label: "Middle of the whole mass from where the instrument is held, toward the head",
    },
    ...{ unit: "mm", part: whole, tolerance: usual.balance },
    of: ({ spec, masses }) => dimensionOf(spec, "hold.x") - masses.whole.centre.x,
  },
  {
    ...{
      id: "balance.moment",
      label: "Moment of the weight about where it is held, positive toward the head",
    },
    ...{ unit: "N·mm", part: whole, tolerance: usual.moment, of: ({ masses }) => masses.moment },
  },
];
