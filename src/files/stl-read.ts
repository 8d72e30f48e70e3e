import type { Surface } from "./surface.ts";

/**
 * A binary STL read back; `wrongNormals` counts triangles whose stated normal doesn't agree with the run of their corners.
 * Or what is wrong with the file: not as long as its count says, or with a coordinate that isn't a number.
 */
export type StlRead =
  | { readonly kind: "ok"; readonly surface: Surface; readonly wrongNormals: number }
  | { readonly kind: "bad"; readonly problem: "length" | "not-finite" };

/** Reads a binary STL. Corners with the same bytes are the same vertex. */
export function stlRead(bytes: Uint8Array): StlRead {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 84 || bytes.length !== 84 + 50 * view.getUint32(80, true))
    return { kind: "bad", problem: "length" };
  const vertices: number[] = [];
  const corners: number[] = [];
  const known = new Map<string, number>();
  const keyOf = placeKey();
  const numbers: number[] = new Array(12).fill(0);
  let wrongNormals = 0;
  for (let at = 84; at < bytes.length; at += 50) {
    for (let i = 0; i < 12; i++) numbers[i] = view.getFloat32(at + 4 * i, true);
    if (!numbers.every(Number.isFinite)) return { kind: "bad", problem: "not-finite" };
    for (let corner = 3; corner < 12; corner += 3) {
      // Adding 0 makes one number of 0 and -0.
      const [x, y, z] = [numbers[corner]! + 0, numbers[corner + 1]! + 0, numbers[corner + 2]! + 0];
      const key = keyOf(x, y, z);
      const vertex = known.get(key) ?? vertices.length / 3;
      if (vertex === vertices.length / 3) {
        known.set(key, vertex);
        vertices.push(x, y, z);
      }
      corners.push(vertex);
    }
    if (!agrees(numbers)) wrongNormals++;
  }
  return { kind: "ok", surface: { vertices, corners }, wrongNormals };
}

/** Makes a key of three float32: their bytes as a text of six signs, which is quicker than writing the numbers out. */
function placeKey(): (x: number, y: number, z: number) => string {
  const floats = new Float32Array(3);
  const halves = new Uint16Array(floats.buffer);
  return (x, y, z) => {
    floats[0] = x;
    floats[1] = y;
    floats[2] = z;
    return String.fromCharCode(halves[0]!, halves[1]!, halves[2]!, halves[3]!, halves[4]!, halves[5]!);
  };
}

/** Whether the normal in front of a triangle points to its front; a sliver narrower than float32 can show has none. */
function agrees([nx, ny, nz, ax, ay, az, bx, by, bz, cx, cy, cz]: readonly number[]): boolean {
  const [ux, uy, uz] = [bx! - ax!, by! - ay!, bz! - az!];
  const [vx, vy, vz] = [cx! - ax!, cy! - ay!, cz! - az!];
  const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const size = Math.hypot(x, y, z);
  const longest = Math.max(Math.hypot(ux, uy, uz), Math.hypot(vx, vy, vz));
  if (size <= 1e-5 * longest * longest) return true;
  return (nx! * x + ny! * y + nz! * z) / size > 0.99;
}
