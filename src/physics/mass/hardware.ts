import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { fromCore } from "../../instrument/core/from-core.ts";
import { onHead } from "../../instrument/head/frame.ts";
import type { Instrument } from "../../instrument/instrument.ts";
import { dimensionOf, type Spec, type SpecHardware } from "../../order/spec.ts";
import type { Piece } from "./piece.ts";

/** What the design screws on, each piece at one place: a tuner in the middle of the head's thickness, what is under the bridge on the core's front; and what lies in its recesses. */
export function hardwarePieces(spec: Spec, instrument: Instrument): Piece[] {
  const held = instrument.held.map(({ id, mass, at }): Piece => {
    return { name: `recess-${id}`, kind: "hardware", mass, centre: at };
  });
  const screwed = spec.hardware.flatMap(({ id, mass, at }) => {
    const places = placesOf(at, spec, instrument);
    return places.map((centre, i): Piece => {
      const name = places.length === 1 ? id : `${id}-${spec.strings[i]!.name}`;
      return { name, kind: "hardware", mass, centre };
    });
  });
  return [...screwed, ...held];
}

function placesOf(at: SpecHardware["at"], spec: Spec, instrument: Instrument): Vec3[] {
  const of = (id: string) => dimensionOf(spec, id);
  const { tuners, core, exits, bridgeStand } = instrument;
  if (at === "bridge") return [{ ...fromCore(core, { x: bridgeStand.middle, z: 0 }), y: 0 }];
  if (at === "exits")
    return exits.along.map((x, i) => {
      return { ...fromCore(core, { x, z: of("tailpiece.height") }), y: exits.across[i]! };
    });
  if (at !== "tuners") return [{ x: at[0], y: at[1], z: at[2] }];
  const face = { nutThickness: of("nut.thickness"), angle: of("head.angle") };
  return tuners.tuners.map(({ along, y }) => ({ ...onHead(face, along, -of("head.thickness") / 2), y }));
}
