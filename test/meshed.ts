import type { Kernel } from "../src/geometry/kernel.ts";
import { mesh } from "../src/geometry/solid/mesh.ts";
import type { Solid } from "../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../src/geometry/solid/triangle-mesh.ts";

/** A solid's mesh, by the kernel's usual chord unless one is given; a solid that has none is an error. */
export function meshed(kernel: Kernel, solid: Solid, chord?: number): TriangleMesh {
  const made = mesh(kernel, solid, chord);
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  return made.mesh;
}
