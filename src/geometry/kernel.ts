import loadModule, { type Manifold, type ManifoldToplevel } from "manifold-3d";
import type { Point } from "./point.ts";
import type { Frame } from "./solid/frame.ts";
import type { TriangleMesh } from "./solid/triangle-mesh.ts";

/** A solid inside the kernel; it means nothing outside the task that made it. */
export type Shape = { readonly inKernel: unique symbol };

/** A shape, or why the kernel won't have it. */
export type ShapeOutcome =
  | { readonly kind: "ok"; readonly shape: Shape }
  | { readonly kind: "refused"; readonly reason: string };

/**
 * What a task may do with the kernel. Shapes never change: each call makes a new one, freed when the task ends. Lengths
 * are mm, rings are simple and closed, the outer counter-clockwise and holes clockwise; nothing is checked here.
 */
export type Bench = {
  /** The rings raised from z = 0 to a height. */
  readonly extrude: (rings: readonly (readonly Point[])[], height: number) => Shape;
  /** A closed mesh, its vertices as float32. */
  readonly ofMesh: (mesh: TriangleMesh) => ShapeOutcome;
  readonly place: (shape: Shape, frame: Frame) => Shape;
  readonly union: (shapes: readonly Shape[]) => Shape;
  /** The first less all the others. */
  readonly cut: (shapes: readonly Shape[]) => Shape;
  readonly intersect: (shapes: readonly Shape[]) => Shape;
  /** The volume in mm³, negative if inside out. */
  readonly volume: (shape: Shape) => number;
  readonly isEmpty: (shape: Shape) => boolean;
  /** Whether the kernel made the shape without an error of its own; one with an error is empty too. */
  readonly isSound: (shape: Shape) => boolean;
  /**
   * The shape without those of its unconnected shells that are nowhere thicker than about `thickness` (mm): what is left
   * of faces that fall together but for rounding. Cavities are shells too, and stay.
   */
  readonly withoutSheets: (shape: Shape, thickness: number) => Shape;
  /** The least distance of two shapes, or `reach` if that is less. */
  readonly gap: (a: Shape, b: Shape, reach: number) => number;
  /** The mesh, copied out; vertices as float32. */
  readonly mesh: (shape: Shape) => TriangleMesh;
  /** Triangles, as triples of indices, that fill the rings, counted through all rings in order. */
  readonly triangulate: (rings: readonly (readonly Point[])[]) => readonly (readonly number[])[];
};

/**
 * The solid kernel, loaded. `work` runs a task and frees every shape that it made, whether it returns or throws; what it
 * returns must hold no shape. `alive` counts shapes made and not yet freed: 0 between tasks.
 */
export type Kernel = {
  readonly work: <T>(task: (bench: Bench) => T) => T;
  readonly alive: () => number;
};

/** Numbers at the kernel's door are rounded to this many parts of a mm. */
const DOOR = 1e6;

function round(value: number): number {
  return Math.round(value * DOOR) / DOOR;
}

/**
 * Loads the kernel; once is enough for a process or a worker. `wasm` says where its binary is (an address), if not beside
 * the module; works in a browser too.
 */
export async function loadKernel(options: { wasm?: string } = {}): Promise<Kernel> {
  const { wasm } = options;
  const loaded = await loadModule(wasm === undefined ? undefined : { locateFile: () => wasm });
  loaded.setup();
  let alive = 0;
  const work = <T>(task: (bench: Bench) => T): T => {
    const made: { delete: () => void }[] = [];
    const keep = <S extends { delete: () => void }>(thing: S): S => {
      made.push(thing);
      alive++;
      return thing;
    };
    try {
      return task(benchOf(loaded, keep));
    } finally {
      for (const thing of made.reverse()) {
        thing.delete();
        alive--;
      }
    }
  };
  return { work, alive: () => alive };
}

type Keep = <S extends { delete: () => void }>(thing: S) => S;

function benchOf(module: ManifoldToplevel, keep: Keep): Bench {
  const give = (solid: Manifold): Shape => keep(solid) as unknown as Shape;
  const take = (shape: Shape): Manifold => shape as unknown as Manifold;
  const all = (shapes: readonly Shape[]): Manifold[] => shapes.map(take);
  return {
    extrude: (rings, height) => {
      const section = keep(new module.CrossSection(rounded(rings), "Positive"));
      return give(section.extrude(round(height)));
    },
    ofMesh: ({ positions, triangles }) => {
      try {
        const vertProperties = Float32Array.from(positions, round);
        const mesh = new module.Mesh({ numProp: 3, vertProperties, triVerts: Uint32Array.from(triangles) });
        return { kind: "ok", shape: give(module.Manifold.ofMesh(mesh)) };
      } catch (error) {
        return { kind: "refused", reason: error instanceof Error ? error.message : String(error) };
      }
    },
    place: (shape, { origin, u, v, w }) => {
      const at = [round(origin.x), round(origin.y), round(origin.z)] as const;
      return give(take(shape).transform([u.x, u.y, u.z, 0, v.x, v.y, v.z, 0, w.x, w.y, w.z, 0, ...at, 1]));
    },
    union: (shapes) => give(module.Manifold.union(all(shapes))),
    cut: (shapes) => give(module.Manifold.difference(all(shapes))),
    intersect: (shapes) => give(module.Manifold.intersection(all(shapes))),
    volume: (shape) => take(shape).volume(),
    isEmpty: (shape) => take(shape).isEmpty(),
    isSound: (shape) => take(shape).status() === "NoError",
    withoutSheets: (shape, thickness) => {
      const shells = take(shape).decompose().map(keep);
      const kept = shells.filter((s) => 2 * Math.abs(s.volume()) > thickness * s.surfaceArea());
      return kept.length === shells.length ? shape : give(module.Manifold.compose(kept));
    },
    gap: (a, b, reach) => take(a).minGap(take(b), reach),
    mesh: (shape) => {
      const { vertProperties, triVerts } = take(shape).getMesh();
      return { positions: Float32Array.from(vertProperties), triangles: Uint32Array.from(triVerts) };
    },
    triangulate: (rings) => module.triangulate(rounded(rings)),
  };
}

function rounded(rings: readonly (readonly Point[])[]): [number, number][][] {
  return rings.map((ring) => ring.map(({ x, y }): [number, number] => [round(x), round(y)]));
}
