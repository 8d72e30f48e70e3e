import { beforeAll, describe, expect, it } from "vitest";
import { circle } from "../../../src/geometry/circle.ts";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { clash } from "../../../src/geometry/solid/clash.ts";
import { type Frame, fromFrame } from "../../../src/geometry/solid/frame.ts";
import { meshMeasures } from "../../../src/geometry/solid/mesh-measures.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../../src/geometry/solid/triangle-mesh.ts";
import { between, cross, dot, type Vec3 } from "../../../src/geometry/solid/vec3.ts";
import { coreAxes } from "../../../src/instrument/core/from-core.ts";
import { type Side, sides } from "../../../src/order/side.ts";
import { caul } from "../../../src/workshop/jigs/caul-place.ts";
import { drilling } from "../../../src/workshop/jigs/drill-plate.ts";
import { jointGuideBox } from "../../../src/workshop/jigs/joint-guide.ts";
import { printed } from "../../../src/workshop/jigs/print-rules.ts";
import { hits } from "../../ray.ts";
import { specOf } from "../../samples.ts";
import { degreesBetween, facing } from "./jig-faces.ts";
import { asSolid, inBoth, looked, type Made, madeOf, meshed } from "./look.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const winged = looked.filter(({ design }) => design !== "thrift");

function meshesOf(made: Made, name: string): TriangleMesh[] {
  const own = new RegExp(`^${name}(-\\d+-\\d+)?$`);
  const found = made.files.filter((file) => own.test(file.name)).map((file) => made.meshOf(file.name));
  expect(found.length, name).toBeGreaterThan(0);
  return found;
}

function together(made: Made, name: string): Solid {
  return { kind: "union", solids: meshesOf(made, name).map(asSolid) };
}

const minus = ({ x, y, z }: Vec3): Vec3 => ({ x: 0 - x, y: 0 - y, z: 0 - z });

/** A jig set into a frame of the core. */
function onCore(made: Made, jig: Solid, frame: Frame): Solid {
  return {
    kind: "place",
    solid: { kind: "place", solid: jig, frame },
    frame: coreAxes(made.model.instrument.core),
  };
}

/** The way from the instrument's axes that a direction of the core frame has. */
function inAxes(made: Made, way: Vec3): Vec3 {
  const frame = { ...coreAxes(made.model.instrument.core), origin: { x: 0, y: 0, z: 0 } };
  return fromFrame(frame, way.x, way.y, way.z);
}

const wingOf = (made: Made, side: Side) => made.model.instrument.wings![side];

/** A caul on its joint: as it is printed, along the joint on x, its clamp face `far` out of the joint face. */
function caulFrame(made: Made, glued: Side, far: number, out: 1 | -1): Frame {
  const { face } = wingOf(made, glued).joint;
  const w = out === 1 ? face.w : minus(face.w);
  const origin = { x: face.origin.x + far * w.x, y: face.origin.y + far * w.y, z: face.origin.z + far * w.z };
  const up = minus(w);
  return { origin, u: face.u, v: cross(up, face.u), w: up };
}

/** How far out a caul's clamp face lies: its lips end at the relief, past what the wing's own joint reaches out. */
function farOf(made: Made, held: Side, glued: Side, mesh: TriangleMesh): number {
  const { face } = wingOf(made, glued).joint;
  const out = held === glued ? face.w : minus(face.w);
  const own = wingOf(made, held).joint;
  const corners = [0, own.length].flatMap((x) => [0, own.deep].map((y) => fromFrame(own.face, x, y, 0)));
  const near = Math.max(...corners.map((place) => dot(between(face.origin, place), out)));
  return meshMeasures(mesh).most.z + near + caul.relief;
}

/** The least gap from a caul, as it is put together, to the wing in it; none where they run into each other. */
function gapIn(made: Made, name: string, held: Side, glued: Side, wing: Solid): number | "clash" {
  const [mesh] = meshesOf(made, name);
  const far = farOf(made, held, glued, mesh!);
  const frame = caulFrame(made, glued, far, held === glued ? 1 : -1);
  const found = clash(kernel, onCore(made, together(made, name), frame), wing);
  if (found.kind !== "ok") throw new Error(JSON.stringify(found));
  return found.interference > 1e-3 ? "clash" : found.gap;
}

/** By how much the angle between a caul's clamp face and its lips differs from that between a wing's joint face and its front, degrees. */
function wrongBy(caulMesh: TriangleMesh, wing: TriangleMesh, made: Made, side: Side): number {
  const { joint, place } = wingOf(made, side);
  const mate = facing(wing, inAxes(made, minus(joint.face.w)));
  const front = facing(wing, inAxes(made, place.frame.w));
  expect(mate.area).toBeGreaterThan(1000);
  expect(front.area).toBeGreaterThan(1000);
  const clamp = facing(caulMesh, { x: 0, y: 0, z: -1 });
  const frame = caulFrame(made, side, 0, 1);
  const w = place.frame.w;
  const own: Vec3 = { x: dot(w, frame.u), y: dot(w, frame.v), z: dot(w, frame.w) };
  const inner = [own, minus(own)].map((way) => facing(caulMesh, way));
  for (const { area } of inner) expect(area).toBeGreaterThan(300);
  // The clamp face looks out of the core, the mating face into it.
  const wanted = degreesBetween(minus(mate.normal), front.normal);
  return Math.max(
    Math.abs(degreesBetween(clamp.normal, inner[0]!.normal) - wanted),
    Math.abs(180 - degreesBetween(clamp.normal, inner[1]!.normal) - wanted),
  );
}

describe.each(winged)("the wings' jigs of $design with $count strings", ({ spec }) => {
  const made = madeOf(() => kernel, spec());
  const meshes = new Map<Side, TriangleMesh>();
  const wingMesh = (side: Side) => {
    const there = meshes.get(side) ?? meshed(kernel, wingOf(made, side).solid);
    meshes.set(side, there);
    return there;
  };

  it("hold each wing at its angles, clamp face parallel to the joint, with the loose clearance round the rim", () => {
    for (const side of sides) {
      for (const piece of meshesOf(made, `caul-${side}`)) {
        expect(wrongBy(piece, wingMesh(side), made, side), side).toBeLessThan(0.02);
      }
      const gap = gapIn(made, `caul-${side}`, side, side, asSolid(wingMesh(side)));
      expect(gap, side).not.toBe("clash");
      expect(Math.abs((gap as number) - printed.clearance.loose), side).toBeLessThan(0.05);
    }
  });

  it("press on a line in the middle third of the joint's depth", () => {
    for (const side of sides) {
      for (const mesh of meshesOf(made, `caul-${side}`)) {
        const { least, most } = meshMeasures(mesh);
        const middle = (least.x + most.x) / 2 - 12;
        const turned = side === "bass" ? -1 : 1;
        const heights = Array.from({ length: 400 }, (_, i) => {
          const y = least.y + 0.3 + ((most.y - least.y - 0.6) * i) / 399;
          return { down: -turned * y, deep: hits(mesh, [middle, y, -5], [0, 0, 1])[0]! - 5 };
        });
        const groove = heights.filter(({ deep }) => deep > 0.3 && deep < 2);
        expect(groove.length, side).toBeGreaterThan(3);
        const third = wingOf(made, side).joint.deep / 3;
        for (const { down } of groove) {
          expect(down).toBeGreaterThan(third);
          expect(down).toBeLessThan(2 * third);
        }
      }
    }
  });

  it("clamp the second wing against a caul on the first one in place, parallel to the second joint", () => {
    const [first, second] =
      wingOf(made, "treble").joint.length > wingOf(made, "bass").joint.length
        ? (["treble", "bass"] as const)
        : (["bass", "treble"] as const);
    const name = `caul-${first}-in-place`;
    const gap = gapIn(made, name, first, second, asSolid(wingMesh(first)));
    expect(gap).not.toBe("clash");
    expect(Math.abs((gap as number) - printed.clearance.loose)).toBeLessThan(0.05);
    const mate = facing(wingMesh(second), inAxes(made, minus(wingOf(made, second).joint.face.w)));
    const frame = { ...caulFrame(made, second, 0, -1), origin: { x: 0, y: 0, z: 0 } };
    for (const mesh of meshesOf(made, name)) {
      const { normal } = facing(mesh, { x: 0, y: 0, z: -1 });
      const placed = inAxes(made, fromFrame(frame, normal.x, normal.y, normal.z));
      // Both look out of the core's first side, the one square through it from the second joint.
      expect(degreesBetween(placed, mate.normal)).toBeLessThan(0.1);
    }
    expect(made.files.find(({ name: one }) => one.startsWith(`caul-${second}`))!.what).toContain(
      `against the caul on the ${first} wing`,
    );
  });

  it("start the pins' holes in wing and core on one line, square to the joint", () => {
    for (const side of sides) {
      const { joint, solidInput } = wingOf(made, side);
      const jig = together(made, `drill-joint-${side}`);
      const { face } = joint;
      const [fall, box] = [-face.v.z, meshMeasures(meshesOf(made, `drill-joint-${side}`)[0]!)];
      const { top } = jointGuideBox({
        ...{ pins: joint.pins, deep: joint.deep },
        core: {
          front: joint.inside.head.front / fall,
          rise: (joint.inside.tail.front - joint.inside.head.front) / fall / joint.length,
        },
      });
      expect(box.most.z).toBeGreaterThan(top + 12);
      // Printed standing on its front: its z runs down the joint face; its y into the core, or of the bass side out of it.
      const at = (out: number): Frame => ({
        origin: fromFrame(face, 0, -top, out),
        ...{ u: face.u, v: cross(face.v, face.u), w: face.v },
      });
      const onWing = onCore(made, jig, at(-drilling.thick));
      const onSide = onCore(made, jig, at(0));
      const wing = asSolid(wingMesh(side));
      const met = clash(kernel, onWing, wing);
      expect(met.kind === "ok" && met.interference, side).toBeLessThan(1);
      expect(met.kind === "ok" && met.contact, side).toBeGreaterThan(500);
      expect(inBoth(kernel, onSide, made.model.instrument.neckSolid), side).toBeLessThan(1);
      for (const { at: place } of joint.pins) {
        const rod = (diameter: number, from: number, to: number, aside = 0): Solid =>
          onCore(
            made,
            {
              ...{ kind: "extrude", base: from, height: to - from },
              outlines: [{ outer: circle({ x: aside, y: 0 }, diameter / 2), holes: [] }],
            },
            { origin: place, u: face.u, v: cross(face.w, face.u), w: face.w },
          );
        for (const [laid, from, to] of [
          [onWing, -20, 0],
          [onSide, 0, 20],
        ] as const) {
          expect(inBoth(kernel, laid, rod(3.1, from, to)), side).toBeLessThan(1e-3);
          expect(inBoth(kernel, laid, rod(3.1, from, to, 0.5)), side).toBeGreaterThan(0.1);
          expect(inBoth(kernel, laid, rod(4, from, to)), side).toBeGreaterThan(1);
        }
        // The finished holes lie on the same line.
        const hole = solidInput.pin.diameter - 0.2;
        expect(inBoth(kernel, wing, rod(hole, 0, 5)), side).toBeLessThan(1e-3);
      }
    }
  });
});

describe("a caul of other angles", () => {
  it("is found: by half a degree of cant it holds the wing wrong, and by three it runs into it", () => {
    const made = madeOf(() => kernel, specOf("sedge", 5));
    const wing = meshed(kernel, wingOf(made, "treble").solid);
    const [mesh] = meshesOf(made, "caul-treble");
    expect(wrongBy(mesh!, wing, made, "treble")).toBeLessThan(0.02);
    const canted = (cant: number) =>
      madeOf(() => kernel, specOf("sedge", 5, `set: { wing.treble.cant: ${cant} }`));
    expect(wrongBy(meshesOf(canted(12.5), "caul-treble")[0]!, wing, made, "treble")).toBeGreaterThan(0.4);
    const other = canted(9);
    const [wrong] = meshesOf(other, "caul-treble");
    const far = farOf(other, "treble", "treble", wrong!);
    const laid = onCore(made, asSolid(wrong!), caulFrame(made, "treble", far, 1));
    expect(inBoth(kernel, laid, asSolid(wing))).toBeGreaterThan(10);
  });
});
