import { fromPlane } from "../instrument/own-plane.ts";
import { thinnest } from "../instrument/wall.ts";
import { dimensionOf, type Spec } from "../order/spec.ts";
import { usual } from "../order/usual-tolerance.ts";
import { onEndpin } from "../physics/mass/on-endpin.ts";
import type { Model } from "../workshop/model.ts";
import { type Dimension, length } from "./dimension.ts";

/** What is worked out of what holds the instrument up. */
export function restDimensions({ rests }: Spec): Dimension[] {
  const { chin, mounts, endpin } = rests;
  const kinds = [...new Set(mounts.map(({ kind }) => kind))];
  return [
    ...(chin === null ? [] : ofChin(chin.hold)),
    ...kinds.map((kind) =>
      length(
        "rests",
        `rest.${kind}.slot`,
        `Length of a slot for a ${kind} rest, round ends included`,
        ({ spec }) => {
          return dimensionOf(spec, `rest.${kind}.travel`) + dimensionOf(spec, `rest.${kind}.hole`);
        },
      ),
    ),
    ...mounts.flatMap(({ kind, id }) => ofMount(kind, id)),
    ...(endpin ? ofEndpin : []),
  ];
}

function ofChin(hold: "clamp" | "screws"): Dimension[] {
  const of = (name: string, label: string, value: (model: Model) => number) =>
    length("rests", `rest.chin.${name}`, `Chin rest: ${label}`, value);
  return [
    of(
      "support",
      "least flat wood round its footprint, before an edge is eased or a joint begins",
      (model) => {
        return model.instrument.chinRest!.support.left;
      },
    ),
    of("strings", "least room to a string", ({ instrument }) => instrument.chinRest!.strings),
    of("tailpiece", "least room to the tailpiece", ({ instrument }) => instrument.chinRest!.tailpiece),
    hold === "clamp"
      ? of(
          "edge",
          "thickness of the edge that its clamp grips",
          ({ instrument }) => instrument.chinRest!.edge,
        )
      : of("screws.wood", "least wood round its screws' holes", (model) => woodAt(model, "rest.chin")),
  ];
}

function woodAt({ instrument }: Model, place: string): number {
  return thinnest(instrument.mountWalls.filter((wall) => wall.place === place)).left;
}

function ofMount(kind: "shoulder" | "knee", id: string): Dimension[] {
  const place = `rest.${kind}.${id}`;
  const of = (name: string, label: string, value: (model: Model) => number) =>
    length("rests", `${place}.${name}`, `Mount ${id} for a ${kind} rest: ${label}`, value);
  const at = ({ instrument }: Model) => instrument.mountPlaces.find((mount) => mount.place === place)!;
  const middle = (model: Model) => fromPlane(at(model).plane, at(model).at);
  return [
    of("x", "its middle where it leaves the back, from the nut", (model) => middle(model).x),
    of("y", "its middle where it leaves the back, to the treble side", (model) => middle(model).y),
    of("wood", "least wood round it", (model) => woodAt(model, place)),
  ];
}

const bearing = ({ spec, instrument, masses }: Model) =>
  onEndpin(instrument.endpin!.tip, dimensionOf(spec, "endpin.lean"), masses.whole);

const ofEndpin: readonly Dimension[] = [
  length("neck", "endpin.wood", "Least wood round the endpin's bore", ({ instrument }) => {
    return thinnest(instrument.endpin!.walls).left;
  }),
  length(
    "neck",
    "endpin.tip.x",
    "Tip of the endpin from the nut",
    ({ instrument }) => instrument.endpin!.tip.x,
  ),
  length(
    "neck",
    "endpin.tip.z",
    "Tip of the endpin out of z = 0",
    ({ instrument }) => instrument.endpin!.tip.z,
  ),
  {
    ...{ id: "balance.endpin", unit: "mm", part: "instrument", tolerance: usual.balance },
    label: "Middle of the whole mass from over the endpin's tip, level and toward the player",
    of: (model) => bearing(model).away,
  },
  {
    ...{ id: "balance.endpin.moment", unit: "N·mm", part: "instrument", tolerance: usual.moment },
    label: "Moment of the weight about the endpin's tip, positive toward the player",
    of: (model) => bearing(model).moment,
  },
];
