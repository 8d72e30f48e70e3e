import { describe, expect, it } from "vitest";
import { partSawFlats } from "../../src/drawing/flat/part-saw-flats.ts";
import { wingFlats } from "../../src/drawing/flat/wing-flats.ts";
import { fromFrame } from "../../src/geometry/solid/frame.ts";
import { dot } from "../../src/geometry/solid/vec3.ts";
import { type Side, sides } from "../../src/order/side.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { partSequence } from "../../src/workshop/bandsaw/part-sequence.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { type PartSawing, sawingNamed } from "../../src/workshop/part-sawing.ts";
import { alone, forced } from "../forced.ts";
import { specOf } from "../samples.ts";

const modelled = (spec: Spec) => modelOf(spec, memoryStore());

function linesOf({ cuts }: PartSawing) {
  if (cuts.sawn.kind !== "ok" || cuts.saw.kind !== "ok") throw new Error("no saw line");
  return { ...cuts.sawn, kerf: cuts.saw.blade.kerf, radius: cuts.saw.blade.radius };
}

/** The corners of a wing's joint face, in the wing's own plane: along, out from the core, and down from its front; by the joint's own frame. */
function jointCorners({ instrument, spec }: Model, side: Side) {
  const { joint, place } = instrument.wings![side];
  const { origin, u, v, w } = place.frame;
  const s = side === "treble" ? 1 : -1;
  const own = (along: number, down: number) => {
    const p = fromFrame(joint.face, along, down, 0);
    const d = { x: p.x - origin.x, y: p.y - origin.y, z: p.z - origin.z };
    return { x: dot(d, u), y: s * dot(d, v), down: -dot(d, w) };
  };
  expect(spec.wings).not.toBeNull();
  return [
    own(0, 0),
    own(joint.length, 0),
    own(joint.back.head, joint.deep),
    own(joint.back.tail, joint.deep),
  ];
}

/** How far a place of a wing lies from the plane of a tilted blade that runs along the joint's saw line on the face that is up, mm; positive on the wing's side. */
function fromBlade(sawing: PartSawing, place: { x: number; y: number; down: number }): number {
  const { lines } = linesOf(sawing);
  const [joint] = sawing.sequence;
  const path = lines.find(({ cut }) => cut === "joint")!.path;
  const [a, b] = [path.points[0]!, path.points.at(-1)!];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const out = ((b.x - a.x) * (place.y - a.y) - (b.y - a.y) * (place.x - a.x)) / length;
  const under = joint!.up === "front" ? place.down : sawing.planed - place.down;
  const lean = (Math.abs(joint!.tilt) * Math.PI) / 180;
  // The wing lies on the low side: the table falls away under it, so from the upper face down the blade goes farther into the wing.
  return out * Math.cos(lean) - under * Math.sin(lean);
}

describe("a wing's joint at the saw", () => {
  const five = alone(specOf("sedge", 5));
  const canted = (cant: number, more: Record<string, number> = {}) =>
    forced(five, { "wing.bass.cant": cant, "wing.treble.cant": cant, ...more });

  it.each<[string, Spec]>([
    ["as it is", five],
    ["a viola's, on a tapered core", alone(specOf("mallow", 5))],
    ["a cello's", alone(specOf("bulrush", 5))],
    ["canted the other way, its back up", canted(-7, { "wing.treble.rake": 0, "wing.bass.rake": 0 })],
    ["square", canted(0)],
    ["raked and splayed", canted(18, { "wing.treble.splay": 5, "wing.bass.splay": -3 })],
  ])("leaves the allowance on every corner of its face: %s", (_, spec) => {
    const model = modelled(spec);
    for (const side of sides) {
      const sawing = sawingNamed(model.partSawing(), `wing-${side}-saw`);
      const { kerf } = linesOf(sawing);
      for (const corner of jointCorners(model, side))
        expect(fromBlade(sawing, corner), side).toBeCloseTo(dimensionOf(spec, "saw.allowance") + kerf / 2, 4);
    }
  });

  it("has the face up whose arris comes out sharp on the low side, as the wing's own drawing says", () => {
    for (const [cant, up, down] of [
      [8, "front", "back"],
      [-7, "back", "front"],
    ] as const) {
      const spec = canted(cant, { "wing.treble.rake": 0, "wing.bass.rake": 0 });
      const model = modelled(spec);
      const { sequence } = sawingNamed(model.partSawing(), "wing-treble-saw");
      expect(sequence[0]).toMatchObject({ cut: "joint", up, onTable: down, fence: "low side" });
      const { frame, joint } = model.instrument.wings!.treble.place;
      // The wing's faces turn toward its joint by less than a right angle where the front arris is sharp.
      expect(Math.sign(dot(frame.w, joint.normal))).toBe(up === "front" ? 1 : -1);
      const store = memoryStore();
      const words = wingFlats
        .find(({ name }) => name === "wing-treble")!
        .of(model, store)
        .value.notes.map(({ text }) => text);
      expect(words).toContain(
        `table falling ${Math.abs(sequence[0]!.tilt).toFixed(2)} deg to the wing's side: ${down} down`,
      );
      expect(words).toContain(`table falling to the waste's side: ${up} down`);
      const notes = partSawFlats
        .find(({ name }) => name === "wing-treble-saw")!
        .of(model, store)
        .value.notes.map(({ text }) => text)
        .join("\n");
      expect(notes).toMatch(
        new RegExp(
          `CUT THE JOINT: TABLE TILTED [\\d.]+ DEG, FALLING AWAY FROM THE COLUMN \\(COLUMN ON THE LEFT\\), ${down.toUpperCase()} ON THE TABLE`,
        ),
      );
      expect(/CARRY IT THERE BY THE PINS/.test(notes)).toBe(up === "back");
    }
  });

  it("goes past the blade with the end first that puts its joint beside the blade, and the other way on a table that tilts the other way", () => {
    const of = (given: {
      side?: Side;
      hand?: "right" | "left";
      bevel?: number;
      tilt?: readonly [number, number];
    }) =>
      partSequence({
        ...{
          kind: "wing",
          side: "treble",
          hand: "right",
          bevel: 8,
          thickness: 22,
          waste: 10,
          tilt: [-5, 45],
        },
        ...given,
      })[0]!;
    // Seen from above, head at the left, a right hand's treble wing has its joint toward the reader; turned so that it lies right of the blade, its head leads.
    expect(of({}).leads).toBe("head");
    expect(of({ side: "bass" }).leads).toBe("tail");
    expect(of({ hand: "left" }).leads).toBe("tail");
    expect(of({ bevel: -8 }).leads).toBe("tail");
    expect(of({ tilt: [-45, 5] })).toMatchObject({ leads: "tail", tilt: -8 });
    // A table that reaches neither way is told by a check, as it would be tilted.
    expect(of({ tilt: [-5, 5] }).tilt).toBe(8);
    expect(of({ bevel: 0 })).toMatchObject({ tilt: 0, fence: "none", leads: "either" });
    const { work, guide } = of({});
    expect(work).toBeCloseTo(22 / Math.cos((8 * Math.PI) / 180) + 10 * Math.sin((8 * Math.PI) / 180), 9);
    expect(guide).toBeCloseTo(work + 13, 9);
  });
});
